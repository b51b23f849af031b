package io.bindprep.pdf.strip;

/**
 * Ground around each dot of a picture, as it would be without lettering: the closing of its lightness (Serra, Image Analysis
 * and Mathematical Morphology, 1982), which fills in what is dark and narrow; of its darkness, what is light and narrow.
 *
 * <p>Shading, tone and panels of a page stay in it, so that a mark is told by what is beside it and not by the whole.
 */
final class LocalGround {
    /** Half the side of the square that fills in strokes up to 3.2 mm broad, in dots. */
    private static final int RADIUS = 8;
    /** Ground is even if it differs by no more lightness from the mean of what lies so many dots before and behind; our choice. */
    private static final int AWAY = 14;

    private static final float EVEN = 2.5f;
    /** Contrast in lightness from which a dot stands off even ground without noise, and what noise adds; our choice. */
    private static final float LEAST_CONTRAST = 9;

    private static final float CONTRAST_WITHOUT_NOISE = 4;
    private static final float NOISE_TIMES = 3;
    private static final int END = 2;
    /** Steps of lightness in which contrast is counted, and how many of them there can be. */
    private static final int STEPS = 64;

    private static final int RANGE = 100 * STEPS;
    private final int w;
    private final int h;
    private final boolean[] own;
    private final float[] ground;
    /** Contrast of each dot to the ground around it, lightness. */
    private final float[] contrast;

    private final float threshold;

    private LocalGround(PictureDots dots, float[] tone) {
        w = dots.w();
        h = dots.h();
        own = dots.own();
        float[] smooth = mean(tone);
        ground = mean(mean(least(most(smooth, RADIUS), RADIUS)));
        contrast = new float[smooth.length];
        // in the rows at the ends a slope cannot be told from a mark
        for (int i = END * w; i < contrast.length - END * w; i++) {
            contrast[i] = ground[i] - smooth[i];
        }
        threshold = Math.max(LEAST_CONTRAST, CONTRAST_WITHOUT_NOISE + NOISE_TIMES * median(contrast));
    }

    /** The ground of dark marks. */
    static LocalGround light(PictureDots dots) {
        return new LocalGround(dots, tone(dots, 0, 1));
    }

    /** The ground of light marks; tones are turned round, so that it is as light as it was dark. */
    static LocalGround dark(PictureDots dots) {
        return new LocalGround(dots, tone(dots, 100, -1));
    }

    private static float[] tone(PictureDots dots, float from, float sign) {
        float[] tone = new float[dots.rgb().length];
        for (int i = 0; i < tone.length; i++) {
            tone[i] = from + sign * (float) Lightness.of(dots.rgb()[i]);
        }
        return tone;
    }

    /** Contrast from which a dot is a mark. */
    float threshold() {
        return threshold;
    }

    /** Lightness of a dot's ground. */
    float ground(int at) {
        return ground[at];
    }

    float contrast(int at) {
        return contrast[at];
    }

    /** The dots that stand off the ground around them. */
    boolean[] marks() {
        float[] strongest = most(contrast, GroundMarks.HALO);
        boolean[] set = new boolean[contrast.length];
        for (int i = 0; i < set.length; i++) {
            set[i] = own[i] && contrast[i] >= Math.max(threshold, (float) GroundMarks.HALO_SHARE * strongest[i]);
        }
        return set;
    }

    /** The dots that stand off the ground around them by so much. */
    boolean[] marks(double least) {
        boolean[] set = new boolean[contrast.length];
        for (int i = 0; i < set.length; i++) {
            set[i] = own[i] && contrast[i] >= least;
        }
        return set;
    }

    /** Share of the dots around which the ground is even; 1 where there is too little to tell. */
    double evenShare() {
        int even = 0;
        int n = 0;
        for (int y = AWAY; y < h - AWAY; y++) {
            for (int x = AWAY; x < w - AWAY; x++) {
                int at = y * w + x;
                float most = Math.max(bend(at, AWAY), bend(at, AWAY * w));
                even += most <= EVEN ? 1 : 0;
                n++;
            }
        }
        return n == 0 ? 1 : (double) even / n;
    }

    /** Difference of a dot's ground to the mean of what lies before and behind it; a slope has none. */
    private float bend(int at, int away) {
        return Math.abs(ground[at] - (ground[at - away] + ground[at + away]) / 2);
    }

    private float[] mean(float[] values) {
        return along(along(values, 1), w);
    }

    /** Mean of each value and its two neighbours in a row (step 1) or column (step of a row). */
    private float[] along(float[] values, int step) {
        float[] out = new float[values.length];
        for (int i = 0; i < out.length; i++) {
            float before = at(values, i, -step);
            float after = at(values, i, step);
            out[i] = (before + values[i] + after) / 3;
        }
        return out;
    }

    /** A value so far along its row or column; the last there where that lies outside. */
    private float at(float[] values, int i, int step) {
        boolean outside =
                Math.abs(step) < w ? i % w + step < 0 || i % w + step >= w : i + step < 0 || i + step >= w * h;
        return outside ? values[i] : values[i + step];
    }

    private float[] most(float[] values, int radius) {
        return DotWindows.most(values, w, radius);
    }

    private float[] least(float[] values, int radius) {
        float[] negative = new float[values.length];
        for (int i = 0; i < negative.length; i++) {
            negative[i] = -values[i];
        }
        float[] least = most(negative, radius);
        for (int i = 0; i < least.length; i++) {
            least[i] = -least[i];
        }
        return least;
    }

    /** The median to a 64th; without sorting, which takes longer than all the rest. */
    private static float median(float[] values) {
        int[] counts = new int[2 * RANGE + 1];
        for (float v : values) {
            counts[Math.max(-RANGE, Math.min(RANGE, Math.round(v * STEPS))) + RANGE]++;
        }
        int step = 0;
        for (int seen = counts[0]; 2 * seen <= values.length && step < 2 * RANGE; seen += counts[++step]) {
            // up to the median
        }
        return (float) (step - RANGE) / STEPS;
    }
}
