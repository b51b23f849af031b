package io.bindprep.run;

import io.bindprep.job.PressSheet;

/**
 * Cutting of leaves from press sheets.
 *
 * @param up leaves side by side on a sheet
 */
public record Press(PressSheet sheet, int up, Imposition imposition) {
    /** Content of a sheet. */
    public enum Imposition {
        /** Leaves of one copy that follow each other in the stack: cut through, piles are laid on each other. */
        CUT_AND_STACK,
        /** One leaf as often as it fits: each pile is a copy's. */
        STEP_AND_REPEAT
    }
}
