package io.bindprep.pdf.strip;

import java.util.Arrays;

/** The ground that a picture lays along the binding edge, stretch by stretch. */
final class PictureGround {
    /** Longest and shortest stretch along the binding edge that has a ground of its own, and how many are aimed at. */
    private static final int LONGEST = 10 * StripRaster.DOTS_PER_MM;

    private static final int SHORTEST = 2 * StripRaster.DOTS_PER_MM;
    private static final int STRETCHES = 8;
    /** Ground of a stretch is looked for in a band this deep first: what runs through the edge. */
    private static final int BAND = 2 * StripRaster.DOTS_PER_MM;
    /** Share of a band or stretch that one colour has to take to be its ground; our choice. */
    static final double MAIN_SHARE = 0.5;
    /** Colours this near in every channel, of 255, are one ground; above what compression does to a flat colour. */
    static final int SAME = 6;
    /** Channels of a colour that is bare paper. */
    private static final int PAPER = 250;

    /** Noise that a flat colour may have. */
    static final int QUIET = 1;
    /** Dots farther than this from a ground are no noise of it. */
    private static final int SCATTER = 24;

    private final PictureDots dots;
    private final Stretch[] stretches;
    private final int length;
    private final int common;

    /**
     * Ground of one stretch.
     *
     * @param rgb its colour
     * @param noise median difference of its dots to that in the channel in which they differ most, of 255
     * @param share of the stretch's dots that have it, noise allowed for
     * @param depth dots from the edge up to which it is the ground; behind it lies bare paper
     */
    record Stretch(int rgb, double noise, double share, int depth) {
        static final Stretch NONE = new Stretch(0xffffff, 0, 0, Integer.MAX_VALUE);
    }

    PictureGround(PictureDots dots) {
        this.dots = dots;
        length = Math.max(SHORTEST, Math.min(LONGEST, dots.h() / STRETCHES));
        stretches = new Stretch[(dots.h() + length - 1) / length];
        for (int i = 0; i < stretches.length; i++) {
            stretches[i] = stretch(i);
        }
        common = commonOf(stretches);
    }

    Stretch[] stretches() {
        return stretches;
    }

    /** The colour that most stretches have as their ground. */
    int common() {
        return common;
    }

    /** Length of each stretch but the last, in dots. */
    int length() {
        return length;
    }

    /** Share of all stretches whose ground is the common one. */
    double commonShare() {
        return (double) Arrays.stream(stretches).filter(this::isCommon).count() / stretches.length;
    }

    boolean isCommon(Stretch s) {
        return s.share >= MAIN_SHARE && StripRaster.off(s.rgb, common) <= SAME + 3 * s.noise;
    }

    /** Share of dots that lie on the ground of their stretch. */
    double share() {
        return Arrays.stream(stretches).mapToDouble(Stretch::share).average().orElse(0);
    }

    double noise() {
        double[] sorted =
                Arrays.stream(stretches).mapToDouble(Stretch::noise).sorted().toArray();
        return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
    }

    private static int commonOf(Stretch[] all) {
        int best = 0xffffff;
        double most = -1;
        for (Stretch s : all) {
            double near = 0;
            for (Stretch o : all) {
                near += StripRaster.off(s.rgb, o.rgb) <= SAME ? o.share : 0;
            }
            if (near > most) {
                most = near;
                best = s.rgb;
            }
        }
        return best;
    }

    private Stretch stretch(int i) {
        int top = i * length;
        int bottom = Math.min(dots.h(), top + length);
        Stretch whole = ground(top, bottom, dots.w());
        Stretch band = ground(top, bottom, Math.min(BAND, dots.w()));
        boolean other = band.share >= MAIN_SHARE
                && StripRaster.off(band.rgb, whole.rgb) > SAME + 3 * whole.noise
                // paper keeps its ground where a scanner's shadow lies along the edge
                && (whole.share < MAIN_SHARE || whole.noise <= QUIET && band.noise <= QUIET);
        Stretch chosen = other ? band : whole;
        int depth = isPaper(chosen.rgb) ? dots.w() : depth(chosen.rgb, top, bottom);
        boolean paperBehind = depth < dots.w() && 2 * paper(depth, top, bottom) >= (dots.w() - depth) * (bottom - top);
        return paperBehind ? new Stretch(chosen.rgb, chosen.noise, chosen.share, depth) : chosen;
    }

    /** Number of dots from a column on that are bare paper. */
    private int paper(int from, int top, int bottom) {
        int paper = 0;
        for (int y = top; y < bottom; y++) {
            for (int x = from; x < dots.w(); x++) {
                paper += isPaper(dots.rgb()[y * dots.w() + x]) ? 1 : 0;
            }
        }
        return paper;
    }

    /** Columns from the edge of which at least half are of a colour. */
    private int depth(int rgb, int top, int bottom) {
        for (int x = 0; x < dots.w(); x++) {
            int on = 0;
            int n = 0;
            for (int y = top; y < bottom; y++) {
                int at = y * dots.w() + x;
                n += dots.own()[at] ? 1 : 0;
                on += dots.own()[at] && StripRaster.off(dots.rgb()[at], rgb) <= 2 * SAME ? 1 : 0;
            }
            if (2 * on < n) {
                return x;
            }
        }
        return dots.w();
    }

    static boolean isPaper(int rgb) {
        return Math.min(Math.min(rgb >> 16 & 0xff, rgb >> 8 & 0xff), rgb & 0xff) >= PAPER;
    }

    /** The colour that most dots have, by sixteen steps of each channel, then by the mean of what is near. */
    private Stretch ground(int top, int bottom, int depth) {
        int[] bins = new int[4096];
        int most = -1;
        for (int y = top; y < bottom; y++) {
            for (int x = 0; x < depth; x++) {
                int at = y * dots.w() + x;
                if (dots.own()[at]) {
                    int bin = bin(dots.rgb()[at]);
                    bins[bin]++;
                    most = most < 0 || bins[bin] > bins[most] ? bin : most;
                }
            }
        }
        if (most < 0) {
            return Stretch.NONE;
        }
        int centre = (most >> 8) * 16 + 8 << 16 | (most >> 4 & 15) * 16 + 8 << 8 | (most & 15) * 16 + 8;
        int mean = mean(centre, 8, top, bottom, depth);
        return measured(mean(mean, 10, top, bottom, depth), top, bottom, depth);
    }

    private static int bin(int rgb) {
        return (rgb >> 20 & 15) << 8 | (rgb >> 12 & 15) << 4 | rgb >> 4 & 15;
    }

    private int mean(int around, int within, int top, int bottom, int depth) {
        long r = 0;
        long g = 0;
        long b = 0;
        int n = 0;
        for (int y = top; y < bottom; y++) {
            for (int x = 0; x < depth; x++) {
                int at = y * dots.w() + x;
                int v = dots.rgb()[at];
                if (dots.own()[at] && StripRaster.off(v, around) <= within) {
                    r += v >> 16 & 0xff;
                    g += v >> 8 & 0xff;
                    b += v & 0xff;
                    n++;
                }
            }
        }
        return n == 0
                ? around
                : (int) Math.round((double) r / n) << 16
                        | (int) Math.round((double) g / n) << 8
                        | (int) Math.round((double) b / n);
    }

    /** Noise and share of a ground of this colour. */
    private Stretch measured(int rgb, int top, int bottom, int depth) {
        int[] counts = new int[256];
        int n = 0;
        for (int y = top; y < bottom; y++) {
            for (int x = 0; x < depth; x++) {
                int at = y * dots.w() + x;
                if (dots.own()[at]) {
                    counts[StripRaster.off(dots.rgb()[at], rgb)]++;
                    n++;
                }
            }
        }
        int near = 0;
        for (int d = 0; d <= SCATTER; d++) {
            near += counts[d];
        }
        int noise = 0;
        for (int seen = counts[0]; noise < SCATTER && 2 * seen < near; seen += counts[++noise]) {
            // up to the median
        }
        int on = 0;
        for (int d = 0; d <= Math.min(255, 2 + 3 * noise); d++) {
            on += counts[d];
        }
        return n == 0 ? Stretch.NONE : new Stretch(rgb, noise, (double) on / n, Integer.MAX_VALUE);
    }
}
