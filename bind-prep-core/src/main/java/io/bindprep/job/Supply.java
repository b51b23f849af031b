package io.bindprep.job;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Supply of a run beyond its leaves.
 *
 * @param overs spare sheets
 * @param pressSheet the sheet that leaves are printed on and cut from; null where sheets are printed at the size of the leaf
 */
public record Supply(Overs overs, @Nullable PressSheet pressSheet) {
    /** Value where the job says nothing. */
    public static final Supply BUILT_IN =
            new Supply(new Overs(new BigDecimal(5), 10, "built in: common practice, no source"), null);
}
