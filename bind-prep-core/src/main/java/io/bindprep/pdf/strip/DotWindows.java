package io.bindprep.pdf.strip;

/** Windows that slide over dots, in time that does not grow with their size. */
final class DotWindows {
    private DotWindows() {}

    /**
     * The largest value in a square around each dot, cut to the strip.
     *
     * @param w dots in a row
     * @param radius half the side of the square, in dots
     */
    static float[] most(float[] values, int w, int radius) {
        return along(along(values, w, radius, true), w, radius, false);
    }

    /** The dots that lie so near to one that is set, in a square around it. */
    static boolean[] near(boolean[] set, int w, int radius) {
        float[] values = new float[set.length];
        for (int i = 0; i < set.length; i++) {
            values[i] = set[i] ? 1 : 0;
        }
        float[] most = most(values, w, radius);
        boolean[] near = new boolean[set.length];
        for (int i = 0; i < set.length; i++) {
            near[i] = most[i] > 0;
        }
        return near;
    }

    /** The largest value along the rows, or else along the columns: places that may still be it wait in order. */
    private static float[] along(float[] values, int w, int radius, boolean rows) {
        float[] out = new float[values.length];
        int h = w == 0 ? 0 : values.length / w;
        int step = rows ? 1 : w;
        int length = rows ? w : h;
        int lines = rows ? h : w;
        int[] places = new int[length];
        for (int line = 0; line < lines; line++) {
            int start = rows ? line * w : line;
            int head = 0;
            int tail = 0;
            for (int i = 0; i < length + radius; i++) {
                if (i < length) {
                    float v = values[start + i * step];
                    while (tail > head && values[start + places[tail - 1] * step] <= v) {
                        tail--;
                    }
                    places[tail++] = i;
                }
                int at = i - radius;
                if (at >= 0) {
                    while (places[head] < at - radius) {
                        head++;
                    }
                    out[start + at * step] = values[start + places[head] * step];
                }
            }
        }
        return out;
    }
}
