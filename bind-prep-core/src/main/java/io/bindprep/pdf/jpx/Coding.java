package io.bindprep.pdf.jpx;

import java.io.IOException;
import java.util.Arrays;

/**
 * Coding of a component of a tile (markers COD and COC, ISO/IEC 15444-1 A.6.1).
 *
 * @param levels of decomposition
 * @param blockWidth exponent of 2
 * @param style flags of the code blocks' passes
 * @param precinctWidth exponents of 2, by resolution
 */
record Coding(
        int levels,
        int blockWidth,
        int blockHeight,
        int style,
        boolean reversible,
        int[] precinctWidth,
        int[] precinctHeight) {
    static final int BYPASS = 1;
    static final int RESET = 2;
    static final int TERMINATE = 4;
    static final int CAUSAL = 8;
    static final int SEGMENT_SYMBOLS = 32;
    private static final int HIGH_THROUGHPUT = 64;
    private static final int MOST_LEVELS = 32;

    static Coding read(ByteReader in, boolean ownPrecincts) throws IOException {
        int levels = in.u8();
        int w = (in.u8() & 15) + 2;
        int h = (in.u8() & 15) + 2;
        int style = in.u8();
        int transform = in.u8();
        if (levels > MOST_LEVELS || w > 10 || h > 10 || w + h > 12 || transform > 1) {
            throw new IOException("its coding makes no sense");
        }
        if ((style & HIGH_THROUGHPUT) != 0) {
            throw new IOException("it is high-throughput JPEG 2000");
        }
        int[] pw = new int[levels + 1];
        int[] ph = new int[levels + 1];
        Arrays.fill(pw, 15);
        Arrays.fill(ph, 15);
        for (int r = 0; ownPrecincts && r <= levels; r++) {
            int size = in.u8();
            pw[r] = size & 15;
            ph[r] = size >> 4;
            if (r > 0 && (pw[r] == 0 || ph[r] == 0)) {
                throw new IOException("its precincts make no sense");
            }
        }
        return new Coding(levels, w, h, style, transform == 1, pw, ph);
    }

    boolean has(int flag) {
        return (style & flag) != 0;
    }
}
