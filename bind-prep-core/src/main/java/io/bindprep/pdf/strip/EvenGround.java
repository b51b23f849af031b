package io.bindprep.pdf.strip;

import java.awt.Rectangle;
import org.jspecify.annotations.Nullable;

/**
 * A ground whose tone changes evenly, as drawn gradients do: each dot has its own, the median of the dots around it.
 *
 * <p>Of 125 photographs measured, those that pass for one are out of focus nearly all over.
 */
final class EvenGround {
    /** Half of the windows along the edge that a median is taken of, 12 mm and 6 mm: words that run across fill less. */
    private static final int LONG = 30;

    private static final int SHORT = 15;
    /** Half of a square window, 4 mm. */
    private static final int SQUARE = 10;
    /** Difference of 255 to the dot beside or to the ground, above what an even change and compression make. */
    private static final int GRAIN = 3;
    /** Share of dots that may differ more from the dot beside them: letters do. */
    private static final double MOST_GRAIN = 0.15;
    /** Share of the dots away from marks that may leave the ground; measured: 0.3 % by a JPEG of quality 50. */
    private static final double MOST_UNEVEN = 0.005;
    /** Share of the dots that have to lie away from marks, for the ground to be known. */
    private static final double LEAST_AWAY = 0.8;
    /** Lettering is no higher and no broader than this at once, 10 mm; our choice. */
    private static final int BROAD = 10 * StripRaster.DOTS_PER_MM;

    private final PictureDots dots;

    private EvenGround(PictureDots dots) {
        this.dots = dots;
    }

    /** The dots that stand off an even ground; null where the picture has none. */
    static boolean @Nullable [] marks(PictureDots dots) {
        EvenGround even = new EvenGround(dots);
        if (dots.w() < 2 || even.isGrained()) {
            return null;
        }
        boolean[] set = even.marks(0, LONG);
        set = set == null ? even.marks(0, SHORT) : set;
        return set == null ? even.marks(SQUARE, SQUARE) : set;
    }

    /** The same by medians of windows that reach so many dots to each side and along. */
    private boolean @Nullable [] marks(int side, int along) {
        int[] ground = median(side, along);
        boolean[] set = GroundMarks.of(dots, ground);
        boolean[] marks = new boolean[set.length];
        for (int[] piece : Pieces.of(set, dots.w())) {
            Rectangle box = Pieces.box(piece, dots.w());
            if (box.width > BROAD && box.height > BROAD) {
                return null;
            }
            for (int at : piece) {
                marks[at] = true;
            }
        }
        return isEven(ground, marks) ? set : null;
    }

    private boolean isGrained() {
        int grained = 0;
        for (int i = 0; i < dots.rgb().length; i++) {
            boolean last = (i + 1) % dots.w() == 0;
            grained += !last && StripRaster.off(dots.rgb()[i], dots.rgb()[i + 1]) > GRAIN ? 1 : 0;
        }
        return grained > MOST_GRAIN * dots.rgb().length;
    }

    private boolean isEven(int[] ground, boolean[] marks) {
        boolean[] near = DotWindows.near(marks, dots.w(), GroundMarks.HALO);
        int own = 0;
        int away = 0;
        int uneven = 0;
        for (int i = 0; i < marks.length; i++) {
            if (dots.own()[i]) {
                own++;
                away += near[i] ? 0 : 1;
                uneven += !near[i] && StripRaster.off(dots.rgb()[i], ground[i]) >= GRAIN ? 1 : 0;
            }
        }
        return away >= LEAST_AWAY * own && uneven <= MOST_UNEVEN * away;
    }

    /** Median colours of windows that reach so many dots to each side and along. */
    private int[] median(int side, int along) {
        int[] out = new int[dots.rgb().length];
        for (int shift = 0; shift <= 16; shift += 8) {
            for (int x = 0; x < dots.w(); x++) {
                column(out, shift, x, side, along);
            }
        }
        return out;
    }

    /** One channel of one column: the window slides along, with a count of each value in it. */
    private void column(int[] out, int shift, int x, int side, int along) {
        int[] counts = new int[256];
        int from = Math.max(0, x - side);
        int to = Math.min(dots.w() - 1, x + side);
        for (int y = 0; y < Math.min(along, dots.h()); y++) {
            count(counts, shift, y, from, to, 1, 0);
        }
        int median = 0;
        int below = 0; // how many in the window are less than the median
        for (int y = 0; y < dots.h(); y++) {
            if (y + along < dots.h()) {
                below += count(counts, shift, y + along, from, to, 1, median);
            }
            if (y - along > 0) {
                below -= count(counts, shift, y - along - 1, from, to, -1, median);
            }
            int rows = Math.min(dots.h() - 1, y + along) - Math.max(0, y - along) + 1;
            int half = rows * (to - from + 1) / 2;
            while (below > half) {
                below -= counts[--median];
            }
            while (below + counts[median] <= half) {
                below += counts[median++];
            }
            out[y * dots.w() + x] |= median << shift;
        }
    }

    /** Counts the dots of a row in or out; returns how many of them are less than a value. */
    private int count(int[] counts, int shift, int y, int from, int to, int by, int value) {
        int less = 0;
        for (int x = from; x <= to; x++) {
            int v = dots.rgb()[y * dots.w() + x] >> shift & 0xff;
            counts[v] += by;
            less += v < value ? 1 : 0;
        }
        return less;
    }
}
