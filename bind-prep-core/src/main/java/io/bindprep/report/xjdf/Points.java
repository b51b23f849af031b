package io.bindprep.report.xjdf;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as XJDF has them: lengths in points of 1/72 in, plain, to four decimals. */
final class Points {
    // 1/72 in in units of 1/914400 in
    private static final BigDecimal PER_POINT = BigDecimal.valueOf(12_700);

    private static final int DECIMALS = 4;

    private Points() {}

    static String of(Length length) {
        return trimmed(BigDecimal.valueOf(length.units()).divide(PER_POINT, DECIMALS, RoundingMode.HALF_UP));
    }

    static String pair(Length x, Length y) {
        return of(x) + " " + of(y);
    }

    /** A number that is no length. */
    static String plain(BigDecimal number) {
        return trimmed(number.setScale(DECIMALS, RoundingMode.HALF_UP));
    }

    private static String trimmed(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
