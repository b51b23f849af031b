package io.bindprep.run;

import io.bindprep.job.PressSheet;
import io.bindprep.unit.Length;

/**
 * Finds how many leaves stand on a press sheet: in a plain grid, all upright or all turned, each with its bleed all
 * round, the gripper along the sheet's long edge. Marks and fold trims are not provided for.
 */
final class Imposer {
    private Imposer() {}

    /** Leaves on a sheet; 0 where not one fits. */
    static int up(PressSheet sheet, Length width, Length height) {
        Length w = sheet.width().max(sheet.height());
        Length h = sheet.width().min(sheet.height()).minus(sheet.gripper()).max(Length.ZERO);
        Length leafW = width.plus(sheet.bleed().times(2));
        Length leafH = height.plus(sheet.bleed().times(2));
        return (int) Math.max(grid(w, h, leafW, leafH), grid(w, h, leafH, leafW));
    }

    private static long grid(Length w, Length h, Length leafW, Length leafH) {
        return (w.units() / leafW.units()) * (h.units() / leafH.units());
    }

    /** Press sheets for so many leaves a copy of which each copy is cut and stacked by itself. */
    static long cutAndStack(int leaves, int copies, int up) {
        return Math.multiplyExact((long) copies, up(leaves, up));
    }

    /** Press sheets where each leaf is repeated on its sheets. */
    static long stepAndRepeat(int leaves, int copies, int up) {
        return Math.multiplyExact((long) leaves, up(copies, up));
    }

    private static long up(int count, int up) {
        return (count + up - 1L) / up;
    }
}
