package io.bindprep.pdf.strip;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;

/**
 * Lettering in a picture, told from the grain of a photograph: narrow strokes of one contrast on ground that is even around
 * them.
 *
 * <p>Of 872 pages with a photograph, drawing or texture at the edge 12 look like it; of 60 with text there, made like scans of
 * books by paper tones, shading, noise, blur and compression, 7 do not, most of them screen pictures (measured; the pictures
 * are those of desktops and games, each with each of its sides at the edge).
 *
 * @param possible true if there is as much as a page number
 * @param likely true if print is in it, more likely than not
 * @param sure true if it is a page of print beyond doubt
 * @param evenShare share of the dots around which the ground is even
 * @param marks dots that stand off the ground
 */
record Lettering(boolean possible, boolean likely, boolean sure, double evenShare, boolean[] marks) {
    /** Bounds of a letter and its strokes, in dots: 1.4 to 5 mm high, strokes of 0.3 to 1.4 mm. */
    private static final int LOWEST = 7;

    private static final int HIGHEST = 5 * StripRaster.DOTS_PER_MM;
    private static final int LEAST_DOTS = 16;
    private static final double THINNEST = 1.3;
    private static final double THICKEST = 7;
    /** Contrast of a letter's darkest dot, as a multiple of what makes a mark. */
    private static final double CLEARLY = 1.6;

    /** Stretch that is also looked at by itself: a few lines of text beside a picture. */
    private static final int STRETCH = 60 * StripRaster.DOTS_PER_MM;

    /** Least evenness of the ground, number of letters and their share of all marks that show print; measured. */
    private record Least(double even, int letters, double share) {}

    private static final Least SURE = new Least(0.92, 12, 0.6);
    private static final Least LIKELY = new Least(0.85, 8, 0.4);
    private static final Least LIKELY_OF_FEW = new Least(0.95, 4, 0.6);
    private static final Least POSSIBLE = new Least(0.95, 1, 0.5);
    private static final Least LIKELY_IN_STRETCH = new Least(0.95, 5, 0.65);

    static Lettering of(PictureDots dots, LocalGround ground) {
        return new Reader(dots, ground).lettering();
    }

    /** A piece of what stands off the ground. */
    private record Sign(int row, int dots, boolean letter) {}

    /** Reads the signs of a strip, then judges all of it and stretch by stretch. */
    private static final class Reader {
        private final PictureDots dots;
        private final LocalGround ground;
        private final boolean[] marks;
        private final List<Sign> signs = new ArrayList<>();

        Reader(PictureDots dots, LocalGround ground) {
            this.dots = dots;
            this.ground = ground;
            marks = ground.marks();
            for (int[] piece : Pieces.of(marks, dots.w())) {
                Rectangle box = Pieces.box(piece, dots.w());
                signs.add(new Sign(box.y + box.height / 2, piece.length, isLetter(piece, box)));
            }
        }

        Lettering lettering() {
            Stretch whole = new Stretch(0, dots.h());
            boolean likely = whole.meets(LIKELY) || whole.meets(LIKELY_OF_FEW);
            for (int from = 0; !likely && from < dots.h(); from += STRETCH / 2) {
                likely = new Stretch(from, from + STRETCH).meets(LIKELY_IN_STRETCH);
            }
            boolean possible = likely || whole.meets(POSSIBLE);
            return new Lettering(possible, likely, whole.meets(SURE), whole.even(), marks);
        }

        private boolean isLetter(int[] piece, Rectangle box) {
            if (box.height < LOWEST || box.height > HIGHEST || piece.length < LEAST_DOTS) {
                return false;
            }
            int rim = 0;
            float contrast = 0;
            for (int at : piece) {
                rim += isInner(at) ? 0 : 1;
                contrast = Math.max(contrast, ground.contrast(at));
            }
            double stroke = 2.0 * piece.length / rim;
            return stroke >= THINNEST && stroke <= THICKEST && contrast >= CLEARLY * ground.threshold();
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

        /** Signs of some rows, counted once; their ground is looked at only where there are letters enough. */
        private final class Stretch {
            private final int from;
            private final int to;
            private int letters;
            private int inLetters;
            private int all;
            private double even = -1;

            Stretch(int from, int to) {
                this.from = from;
                this.to = to;
                for (Sign sign : signs) {
                    if (sign.row >= from && sign.row < to) {
                        all += sign.dots;
                        letters += sign.letter ? 1 : 0;
                        inLetters += sign.letter ? sign.dots : 0;
                    }
                }
            }

            double even() {
                even = even < 0 ? ground.evenShare(from, to) : even;
                return even;
            }

            boolean meets(Least least) {
                return letters >= least.letters
                        && (double) inLetters / Math.max(1, all) >= least.share
                        && even() >= least.even;
            }
        }
    }
}
