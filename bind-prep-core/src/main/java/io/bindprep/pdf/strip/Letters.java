package io.bindprep.pdf.strip;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;

/**
 * Pieces of a picture that may be letters, with what is around them: print stands on ground that is clean and even close by,
 * grain and foliage do not.
 */
final class Letters {
    /** Sides of a letter or of a word whose letters run together, in dots: 1 to 5 mm high. */
    static final int LOWEST = 5;

    static final int HIGHEST = 5 * StripRaster.DOTS_PER_MM;
    private static final int NARROWEST = 2;
    private static final int LEAST_DOTS = 8;
    private static final double THINNEST = 1.2;
    private static final double THICKEST = 8;
    /** Share of its box that a piece may fill, dots at its rim aside. */
    private static final double FULL = 0.85;

    private static final int RIM = 4;
    /** Contrast of the strongest dot, as a multiple of what makes a mark; measured, as the next two. */
    private static final double CLEARLY = 1.3;
    /** Mean contrast of the ground around a letter, of the letter's own. */
    private static final double CLEAN = 0.15;
    /** Bend of the ground under a letter, of the letter's contrast. */
    private static final double EVEN = 0.1;
    /** Reach of a letter: the ground is looked at so far around it, and so far from any mark, in dots. */
    private static final int AROUND = 7;

    private static final int AWAY = 2;
    private static final int LEAST_AROUND = 10;

    /**
     * A piece of a letter's size.
     *
     * @param contrast of its strongest dot
     * @param letter true if stroke and ground are a letter's
     */
    record Sign(Rectangle box, int dots, float contrast, boolean letter) {}

    private final PictureDots dots;
    private final LocalGround ground;
    private final boolean[] marks;
    private final boolean[] near;
    /** Multiple of the unclean and uneven ground that a letter may stand on. */
    private final double lenience;

    private Letters(PictureDots dots, LocalGround ground, boolean[] marks, double lenience) {
        this.dots = dots;
        this.lenience = lenience;
        this.ground = ground;
        this.marks = marks;
        near = DotWindows.near(marks, dots.w(), AWAY);
    }

    /** The pieces of a letter's size, from the head of the strip on. */
    static List<Sign> of(PictureDots dots, LocalGround ground, boolean[] marks) {
        return of(dots, ground, marks, 1);
    }

    /** The same of letters on ground so many times less clean and even. */
    static List<Sign> of(PictureDots dots, LocalGround ground, boolean[] marks, double lenience) {
        Letters letters = new Letters(dots, ground, marks, lenience);
        List<Sign> signs = new ArrayList<>();
        for (int[] piece : Pieces.of(marks, dots.w())) {
            Rectangle box = Pieces.box(piece, dots.w());
            int low = Math.min(box.width, box.height);
            if (Math.max(box.width, box.height) >= LOWEST
                    && low >= NARROWEST
                    && low <= HIGHEST
                    && piece.length >= LEAST_DOTS) {
                signs.add(letters.sign(piece, box));
            }
        }
        return signs;
    }

    private Sign sign(int[] piece, Rectangle box) {
        int rim = 0;
        float contrast = 0;
        for (int at : piece) {
            rim += isInner(at) ? 0 : 1;
            contrast = Math.max(contrast, ground.contrast(at));
        }
        double stroke = 2.0 * piece.length / rim;
        boolean letter = stroke >= THINNEST
                && stroke <= THICKEST
                && piece.length <= FULL * box.width * box.height + RIM
                && contrast >= CLEARLY * ground.threshold()
                && bend(box) <= lenience * EVEN * contrast
                && unclean(box) <= lenience * CLEAN * contrast;
        return new Sign(box, piece.length, contrast, letter);
    }

    private boolean isInner(int at) {
        int x = at % dots.w();
        int y = at / dots.w();
        return x > 0
                && x < dots.w() - 1
                && y > 0
                && y < dots.h() - 1
                && marks[at - 1]
                && marks[at + 1]
                && marks[at - dots.w()]
                && marks[at + dots.w()];
    }

    /** Mean contrast of the dots around a box that are no marks, nor beside one. */
    private double unclean(Rectangle box) {
        double sum = 0;
        int n = 0;
        Rectangle around = around(box, AROUND);
        for (int y = around.y; y < around.y + around.height; y++) {
            for (int x = around.x; x < around.x + around.width; x++) {
                int at = y * dots.w() + x;
                if (!near[at] && dots.own()[at]) {
                    sum += Math.abs(ground.contrast(at));
                    n++;
                }
            }
        }
        return n < LEAST_AROUND ? Double.POSITIVE_INFINITY : sum / n;
    }

    /** Difference of the ground in the middle of a box to the mean of what lies opposite around it; a slope has none. */
    private double bend(Rectangle box) {
        Rectangle around = around(box, AROUND - 1);
        int x0 = around.x;
        int x1 = around.x + around.width - 1;
        int y0 = around.y;
        int y1 = around.y + around.height - 1;
        int x = (x0 + x1) / 2;
        int y = (y0 + y1) / 2;
        double middle = 2 * ground(x, y);
        double bend = Math.abs(ground(x0, y) + ground(x1, y) - middle);
        bend = Math.max(bend, Math.abs(ground(x, y0) + ground(x, y1) - middle));
        bend = Math.max(bend, Math.abs(ground(x0, y0) + ground(x1, y1) - middle));
        return Math.max(bend, Math.abs(ground(x1, y0) + ground(x0, y1) - middle)) / 2;
    }

    private double ground(int x, int y) {
        return ground.ground(y * dots.w() + x);
    }

    private Rectangle around(Rectangle box, int by) {
        return new Rectangle(box.x - by, box.y - by, box.width + 2 * by, box.height + 2 * by)
                .intersection(new Rectangle(dots.w(), dots.h()));
    }
}
