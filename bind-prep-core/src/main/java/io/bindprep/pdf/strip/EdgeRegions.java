package io.bindprep.pdf.strip;

import java.awt.Rectangle;
import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Areas of a picture that run through the binding edge: a flat colour, and what is printed without a gap beside bare paper and
 * has grain all over. They are a background, wherever in the strip they end.
 */
final class EdgeRegions {
    /** Dots of the edge that an area has to touch to run through it: 3 mm, as {@link PictureInk} asks of a piece. */
    private static final int LEAST_CONTACT = 3 * StripRaster.DOTS_PER_MM;
    /** Flat colours beyond this many are not followed. */
    private static final int MOST_COLOURS = 200;
    /** Difference from which two colours are told apart, four times what compression does; paler lettering is no area's. */
    private static final int OTHER = 4 * PictureGround.SAME;
    /** Smallest printed area that can be a photograph: a square centimetre. */
    private static final int LEAST_AREA = 10 * StripRaster.DOTS_PER_MM * 10 * StripRaster.DOTS_PER_MM;
    /** Share of the dots beyond which an area leaves no paper beside it; our choice. */
    private static final double MOST_AREA = 0.8;
    /** Difference to the dot beside that is grain, and the share of dots that have it in a photograph; our choice. */
    private static final int GRAIN = 3;

    private static final double LEAST_GRAIN = 0.2;
    /** The same of fine grain, beside or below, which smooth surfaces have too: 0.78 and more of card, 0.4 of a flat panel (measured). */
    private static final int FINE = 1;

    private static final double LEAST_FINE = 0.6;
    /** So many dots around an area's end are a blend. */
    private static final int BLEND = 2;
    /** Columns of the edge: the first may be a blend. */
    private static final int EDGE = 3;
    /** Stands for a dot in no area and for one in a grained area; a colour has no such bits. */
    private static final int NONE = -1;

    private static final int GRAINED = -2;

    private final PictureDots dots;
    private final int[] regions;
    private final int[] queue;
    private final IntPredicate printed;

    private EdgeRegions(PictureDots dots, PictureGround ground, boolean colours) {
        this.dots = dots;
        printed = printed(ground);
        regions = new int[dots.rgb().length];
        Arrays.fill(regions, NONE);
        queue = new int[regions.length];
        if (addGrained()) {
            addHighlights();
        }
        if (colours) {
            addColours();
        }
    }

    /** Colours that are neither bare paper nor a flat tint that most stretches have as their ground. */
    private static IntPredicate printed(PictureGround ground) {
        boolean flat = ground.noise() <= PictureGround.QUIET && ground.commonShare() >= PictureGround.MAIN_SHARE;
        if (!flat || PictureGround.isPaper(ground.common())) {
            return v -> !PictureGround.isPaper(v);
        }
        return v -> !PictureGround.isPaper(v) && StripRaster.off(v, ground.common()) > 2 * PictureGround.SAME;
    }

    private int edge(int y) {
        return dots.rgb()[y * dots.w() + EDGE - 1];
    }

    private void addColours() {
        int followed = 0;
        for (int from = 0; from < dots.h() && followed < MOST_COLOURS; ) {
            int rgb = edge(from);
            int to = from + 1;
            while (to < dots.h() && StripRaster.off(edge(to), rgb) <= 2 * PictureGround.SAME) {
                to++;
            }
            int middle = (from + to) / 2 * dots.w() + EDGE - 1;
            if (to - from >= LEAST_CONTACT && regions[middle] == NONE) {
                int colour = dots.rgb()[middle];
                fill(middle, colour, v -> StripRaster.off(v, colour) <= 2 * PictureGround.SAME);
                followed++;
            }
            from = to;
        }
    }

    /**
     * Adds what is printed and hangs together, if it touches enough of the edge, leaves paper beside it and has grain.
     *
     * @return true if there is such an area
     */
    private boolean addGrained() {
        boolean any = false;
        boolean[] tried = new boolean[dots.h()];
        for (int y = 0; y < dots.h(); y++) {
            int start = y * dots.w() + EDGE - 1;
            if (!tried[y] && printed.test(dots.rgb()[start])) {
                int count = fill(start, GRAINED, printed);
                boolean grained = count >= LEAST_AREA && count <= MOST_AREA * regions.length && isGrained(count);
                any |= grained;
                for (int i = 0; i < count; i++) {
                    tried[queue[i] / dots.w()] |= queue[i] % dots.w() == EDGE - 1;
                    regions[queue[i]] = grained ? GRAINED : NONE;
                }
            }
        }
        return any;
    }

    /** Adds the narrow white in a grained area: snow and glints are as white as paper. */
    private void addHighlights() {
        boolean[] tried = new boolean[regions.length];
        for (int start = 0; start < regions.length; start++) {
            if (regions[start] == NONE && !tried[start]) {
                int count = fill(start, GRAINED, v -> true);
                boolean narrow = isNarrow(count);
                for (int i = 0; i < count; i++) {
                    tried[queue[i]] = true;
                    regions[queue[i]] = narrow ? GRAINED : NONE;
                }
            }
        }
    }

    private boolean isNarrow(int count) {
        Rectangle box = Pieces.box(Arrays.copyOf(queue, count), dots.w());
        return Math.min(box.width, box.height) < LEAST_CONTACT;
    }

    private boolean isGrained(int count) {
        int contact = 0;
        int grained = 0;
        int fine = 0;
        for (int i = 0; i < count; i++) {
            int at = queue[i];
            int x = at % dots.w();
            int below = at + dots.w();
            int across = x + 1 < dots.w() ? StripRaster.off(dots.rgb()[at], dots.rgb()[at + 1]) : 0;
            int along = below < regions.length ? StripRaster.off(dots.rgb()[at], dots.rgb()[below]) : 0;
            contact += x == EDGE - 1 ? 1 : 0;
            grained += across > GRAIN ? 1 : 0;
            fine += Math.max(across, along) > FINE ? 1 : 0;
        }
        return contact >= LEAST_CONTACT && (grained >= LEAST_GRAIN * count || fine >= LEAST_FINE * count);
    }

    /** Adds what hangs together with a dot by its sides; returns how many dots now stand in the queue. */
    private int fill(int start, int region, IntPredicate belongs) {
        int count = take(start, region, 0);
        for (int done = 0; done < count; done++) {
            int at = queue[done];
            int x = at % dots.w();
            if (x > 0 && isNew(at - 1, belongs)) {
                count = take(at - 1, region, count);
            }
            if (x + 1 < dots.w() && isNew(at + 1, belongs)) {
                count = take(at + 1, region, count);
            }
            if (at >= dots.w() && isNew(at - dots.w(), belongs)) {
                count = take(at - dots.w(), region, count);
            }
            if (at + dots.w() < regions.length && isNew(at + dots.w(), belongs)) {
                count = take(at + dots.w(), region, count);
            }
        }
        return count;
    }

    private boolean isNew(int at, IntPredicate belongs) {
        return regions[at] == NONE && belongs.test(dots.rgb()[at]);
    }

    private int take(int at, int region, int count) {
        regions[at] = region;
        queue[count] = at;
        return count + 1;
    }

    /** Returns true for a dot of an area that its stretch does not have as its ground, or between the two. */
    private boolean isIn(int at, PictureGround ground) {
        int own = ground.stretches()[at / dots.w() / ground.length()].rgb();
        if (isOther(at, own)) {
            return true;
        }
        boolean besideArea = false;
        boolean besideGround = false;
        int x = at % dots.w();
        for (int y = -BLEND; y <= BLEND; y++) {
            for (int beside = Math.max(-BLEND, -x); beside <= Math.min(BLEND, dots.w() - 1 - x); beside++) {
                int near = at + y * dots.w() + beside;
                if (near >= 0 && near < regions.length) {
                    besideArea |= isOther(near, own);
                    besideGround |= StripRaster.off(dots.rgb()[near], own) <= OTHER;
                }
            }
        }
        return besideArea && besideGround;
    }

    private boolean isOther(int at, int own) {
        int region = regions[at];
        return region == GRAINED || region >= 0 && StripRaster.off(region, own) > OTHER;
    }

    /**
     * Takes the dots of such areas out of the marks; what is printed upon an area stays.
     *
     * @param colours false for grained areas only: a black rule on white is no area
     */
    static void drop(PictureDots dots, PictureGround ground, boolean colours, boolean[] marks) {
        if (dots.w() < EDGE || !Pieces.any(marks, dots.w())) {
            return;
        }
        EdgeRegions found = new EdgeRegions(dots, ground, colours);
        for (int at = 0; at < marks.length; at++) {
            marks[at] = marks[at] && !found.isIn(at, ground);
        }
    }
}
