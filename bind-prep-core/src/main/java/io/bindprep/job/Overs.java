package io.bindprep.job;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Spare sheets for set-up and spoilage.
 *
 * @param percent of the sheets that are needed, rounded up to whole sheets
 * @param least at least so many sheets of each stock and use
 * @param source who asks for them
 */
public record Overs(BigDecimal percent, int least, String source) {
    private static final BigDecimal HUNDRED = new BigDecimal(100);

    /** The overs on so many sheets; none where no sheet is needed. */
    public long on(long sheets) {
        return sheets == 0 ? 0 : Math.max(least, share(sheets));
    }

    /** The percentage alone, rounded up. */
    public long share(long pieces) {
        return percent.multiply(BigDecimal.valueOf(pieces))
                .divide(HUNDRED, 0, RoundingMode.CEILING)
                .longValueExact();
    }
}
