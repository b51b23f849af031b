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
        return along(along(set, w, radius, true), w, radius, false);
    }

    /** The same along the rows, or else along the columns: each dot set reaches on from where the last one ended. */
    private static boolean[] along(boolean[] set, int w, int radius, boolean rows) {
        boolean[] near = new boolean[set.length];
        int h = w == 0 ? 0 : set.length / w;
        int step = rows ? 1 : w;
        int length = rows ? w : h;
        for (int line = 0; line < (rows ? h : w); line++) {
            int start = rows ? line * w : line;
            int done = 0;
            for (int i = 0; i < length; i++) {
                if (set[start + i * step]) {
                    int end = Math.min(length, i + radius + 1);
                    for (int at = Math.max(done, i - radius); at < end; at++) {
                        near[start + at * step] = true;
                    }
                    done = end;
                }
            }
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
