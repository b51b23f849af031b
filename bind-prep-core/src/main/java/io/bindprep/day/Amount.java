package io.bindprep.day;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * An amount between two ends, both included; they are equal where it is certain.
 *
 * @param low never more than {@code high}
 */
public record Amount(BigDecimal low, BigDecimal high) {
    static final Amount ZERO = new Amount(BigDecimal.ZERO, BigDecimal.ZERO);

    public Amount {
        if (low.compareTo(high) > 0) {
            throw new IllegalArgumentException(low + " to " + high);
        }
    }

    Amount plus(Amount other) {
        return new Amount(low.add(other.low), high.add(other.high));
    }

    Amount times(BigDecimal factor) {
        return new Amount(low.multiply(factor), high.multiply(factor));
    }

    Amount times(Amount other) {
        return new Amount(low.multiply(other.low), high.multiply(other.high));
    }

    /** So much done at this pace: the faster it is, the less it takes. */
    Amount paced(BigDecimal count) {
        return new Amount(count.divide(high, MathContext.DECIMAL64), count.divide(low, MathContext.DECIMAL64));
    }

    /** Minutes as hours. */
    Amount hours() {
        BigDecimal hour = BigDecimal.valueOf(60);
        return new Amount(low.divide(hour, MathContext.DECIMAL64), high.divide(hour, MathContext.DECIMAL64));
    }
}
