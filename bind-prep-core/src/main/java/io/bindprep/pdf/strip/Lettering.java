package io.bindprep.pdf.strip;

import io.bindprep.pdf.strip.Letters.Sign;
import java.awt.Rectangle;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lettering in a picture, told from the grain of a photograph: rows of letters of one contrast on ground that is clean and
 * even around them, and more of those than of other pieces of their size.
 *
 * <p>Of 632 pages with a photograph or drawing at the edge and 240 with a texture 10 look like it; of 60 with text there,
 * made like scans of books by paper tones, shading, noise, blur and compression, 3 do not, and 2 of those are found by
 * their ground (measured; the pictures are those of desktops and games, each with each of its sides at the edge).
 *
 * @param possible true if there is as much as a page number
 * @param likely true if print is in it, more likely than not
 * @param sure true if it is a page of print beyond doubt
 * @param marks dots that stand off the ground
 */
record Lettering(boolean possible, boolean likely, boolean sure, LocalGround ground, boolean[] marks) {
    /** Stretch that is also looked at by itself: a few lines of text beside a picture. */
    private static final int STRETCH = 60 * StripRaster.DOTS_PER_MM;

    /** Least number of letters, of letters in words, of those in rows of three, and share of letters in all signs; measured. */
    private record Least(int letters, int inWords, int inRows, double share) {}

    private static final Least SURE = new Least(12, 12, 12, 0.6);
    private static final Least LIKELY = new Least(4, 6, 0, 0.5);
    private static final Least LIKELY_ROW = new Least(3, 4, 4, 0.4);
    private static final Least POSSIBLE = new Least(1, 0, 0, 0.5);
    /** Letters of which hardly any stand in a word are stars and sparkle; our choice. */
    private static final int SCATTERED = 8;

    private static final double MOST_IN_WORDS = 0.2;
    /** Of so many letters on ground less even than this, foliage and masonry, fewer stand in words than in print; measured. */
    private static final double UNEVEN = 0.85;

    private static final double LEAST_IN_WORDS = 0.5;
    private static final Least LIKELY_IN_STRETCH = new Least(6, 8, 6, 0.6);

    /** Contrasts in lightness that print upon a photograph has, of which its grain has less; our choice. */
    private static final double[] STRONG = {25, 40};

    /** Lenience with the ground of such print, and the letters that prove it; measured: 2 of 480 photographs more look like it. */
    private static final double LENIENCE = 2;

    private static final Least UPON = new Least(8, 10, 10, 0.7);

    static Lettering of(PictureDots dots, LocalGround ground) {
        boolean[] marks = ground.marks();
        List<Sign> signs = Letters.of(dots, ground, marks);
        Found whole = Found.of(signs, 0, dots.h());
        boolean scattered = whole.isScattered(LEAST_IN_WORDS) && ground.evenShare() < UNEVEN;
        boolean likely = !scattered && (whole.meets(LIKELY) || whole.meets(LIKELY_ROW))
                || hasStretch(signs, dots.h(), LIKELY_IN_STRETCH);
        boolean possible = likely || whole.meets(POSSIBLE) && !whole.isScattered(MOST_IN_WORDS);
        return new Lettering(possible, likely, !scattered && whole.meets(SURE), ground, marks);
    }

    /** Lettering much stronger than the grain of a photograph that it is printed upon; null where there is none. */
    static boolean @Nullable [] upon(PictureDots dots, LocalGround ground) {
        for (double contrast : STRONG) {
            boolean[] marks = ground.marks(contrast);
            List<Sign> signs = Letters.of(dots, ground, marks, LENIENCE);
            if (Found.of(signs, 0, dots.h()).meets(UPON) || hasStretch(signs, dots.h(), UPON)) {
                return within(signs, marks, dots.w());
            }
        }
        return null;
    }

    /** Returns true if the letters of any stretch of the strip are enough. */
    private static boolean hasStretch(List<Sign> signs, int h, Least least) {
        for (int from = 0; from < h; from += STRETCH / 2) {
            if (Found.of(signs, from, from + STRETCH).meets(least)) {
                return true;
            }
        }
        return false;
    }

    /** The marks that letters are made of. */
    private static boolean[] within(List<Sign> signs, boolean[] marks, int w) {
        boolean[] print = new boolean[marks.length];
        for (Sign sign : signs) {
            Rectangle box = sign.box();
            for (int y = box.y; sign.letter() && y < box.y + box.height; y++) {
                int row = y * w + box.x;
                System.arraycopy(marks, row, print, row, box.width);
            }
        }
        return print;
    }

    /** Letters found in some rows of the strip. */
    private record Found(int letters, WordRows words, int signs) {
        static Found of(List<Sign> all, int from, int to) {
            List<Sign> signs = all.stream()
                    .filter(s -> s.box().getCenterY() >= from && s.box().getCenterY() < to)
                    .toList();
            List<Sign> letters = signs.stream().filter(Sign::letter).toList();
            return new Found(letters.size(), WordRows.of(letters), signs.size());
        }

        boolean isScattered(double share) {
            return letters >= SCATTERED && words.letters() <= share * letters;
        }

        boolean meets(Least least) {
            return letters >= least.letters
                    && words.letters() >= least.inWords
                    && words.inRows() >= least.inRows
                    && letters >= least.share * signs;
        }
    }
}
