package io.bindprep.job;

import java.math.BigDecimal;

/**
 * What a run is supplied with beyond its leaves.
 *
 * @param overs spare sheets
 */
public record Supply(Overs overs) {
    /** Where the job says nothing. */
    public static final Supply BUILT_IN =
            new Supply(new Overs(new BigDecimal(5), 10, "built in: common practice, no source"));
}
