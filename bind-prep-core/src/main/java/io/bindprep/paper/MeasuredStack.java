package io.bindprep.paper;

import io.bindprep.unit.Length;
import io.bindprep.wording.Sources;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A pile of leaves of one stock, put under a gauge. */
public final class MeasuredStack {
    private MeasuredStack() {}

    /** Leaves in a stack of that thickness by the stock's nominal caliper, to the nearest leaf; at least 1. */
    public static int leaves(Stock stock, Length stack) {
        BigDecimal leaves = stack.micrometres().divide(stock.caliperUm(), 0, RoundingMode.HALF_UP);
        return Math.max(1, leaves.intValueExact());
    }

    /**
     * The stock by the measured stack: its caliper is the stack's share of a leaf, its tolerance that of a measured pack.
     *
     * @throws IllegalArgumentException where no stock is that thin or thick
     */
    public static Stock stock(Stock known, int leaves, Length stack) {
        BigDecimal count = BigDecimal.valueOf(leaves);
        BigDecimal caliper = stack.micrometres().divide(count, MathContext.DECIMAL64);
        double um = caliper.doubleValue();
        if (um < StockNumbers.CALIPER_UM[0] || um > StockNumbers.CALIPER_UM[1]) {
            throw new IllegalArgumentException("a leaf of " + caliper.setScale(1, RoundingMode.HALF_UP) + " um");
        }
        BigDecimal reading = StockNumbers.READING_UM.divide(count, MathContext.DECIMAL64);
        return new Stock(
                known.name(),
                known.kind(),
                known.grammage(),
                caliper,
                caliper.multiply(StockNumbers.MEASURED_SHARE, MathContext.DECIMAL64)
                        .max(reading),
                Sources.measuredStack(leaves, stack),
                true);
    }
}
