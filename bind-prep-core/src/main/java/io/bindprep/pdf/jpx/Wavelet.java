package io.bindprep.pdf.jpx;

/**
 * The inverse wavelet transforms, 5-3 reversible and 9-7 (ISO/IEC 15444-1 annex F). Reversible values are whole numbers far
 * below 2^24, which a float holds exactly.
 */
final class Wavelet {
    private static final float ALPHA = -1.586134342f;
    private static final float BETA = -0.052980118f;
    private static final float GAMMA = 0.882911075f;
    private static final float DELTA = 0.443506852f;
    private static final float K = 1.230174105f;

    /** Samples beyond a window that it depends on. */
    static final int REACH = 4;

    private final boolean reversible;

    Wavelet(boolean reversible) {
        this.reversible = reversible;
    }

    /** Turns interleaved subbands of a window into samples: row by row, then column by column. */
    void invert(Window w) {
        int width = w.width();
        int height = w.height();
        for (int y = 0; y < height; y++) {
            lines(w.values, y * width, 1, width, w.x0, 1);
        }
        lines(w.values, 0, width, height, w.y0, width);
    }

    /**
     * Inverts lines that lie side by side.
     *
     * @param from where the first begins
     * @param step from one sample of a line to its next
     * @param length samples of a line
     * @param first place of the first sample, whose parity says whether it is low or high
     * @param beside lines, one value from each other
     */
    private void lines(float[] v, int from, int step, int length, int first, int beside) {
        int even = first & 1;
        if (length == 1) {
            for (int i = 0; even == 1 && i < beside; i++) {
                v[from + i] = reversible ? (int) v[from + i] / 2 : v[from + i] / 2;
            }
            return;
        }
        if (reversible) {
            for (int n = even; n < length; n += 2) {
                low(v, from, step, length, n, beside);
            }
            for (int n = 1 - even; n < length; n += 2) {
                high(v, from, step, length, n, beside);
            }
            return;
        }
        for (int n = 0; n < length; n++) {
            float scale = (n & 1) == even ? K : 1 / K;
            for (int i = from + n * step; i < from + n * step + beside; i++) {
                v[i] *= scale;
            }
        }
        lift(v, from, step, length, even, beside, -DELTA);
        lift(v, from, step, length, 1 - even, beside, -GAMMA);
        lift(v, from, step, length, even, beside, -BETA);
        lift(v, from, step, length, 1 - even, beside, -ALPHA);
    }

    private static void lift(float[] v, int from, int step, int length, int first, int beside, float by) {
        for (int n = first; n < length; n += 2) {
            int at = from + n * step;
            int before = from + before(n) * step;
            int after = from + after(n, length) * step;
            for (int i = 0; i < beside; i++) {
                v[at + i] += by * (v[before + i] + v[after + i]);
            }
        }
    }

    private static void low(float[] v, int from, int step, int length, int n, int beside) {
        int at = from + n * step;
        int before = from + before(n) * step;
        int after = from + after(n, length) * step;
        for (int i = 0; i < beside; i++) {
            v[at + i] -= (int) (v[before + i] + v[after + i]) + 2 >> 2;
        }
    }

    private static void high(float[] v, int from, int step, int length, int n, int beside) {
        int at = from + n * step;
        int before = from + before(n) * step;
        int after = from + after(n, length) * step;
        for (int i = 0; i < beside; i++) {
            v[at + i] += (int) (v[before + i] + v[after + i]) >> 1;
        }
    }

    /** The neighbour before, mirrored at the end of the line. */
    private static int before(int n) {
        return n == 0 ? 1 : n - 1;
    }

    private static int after(int n, int length) {
        return n == length - 1 ? length - 2 : n + 1;
    }
}
