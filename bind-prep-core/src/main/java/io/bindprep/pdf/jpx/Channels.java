package io.bindprep.pdf.jpx;

/**
 * A decoded rectangle: channels of eight bits, row by row.
 *
 * @param colours channels of colour, in their order
 * @param alpha the opacity; empty where there is none
 */
public record Channels(int width, int height, byte[][] colours, byte[] alpha) {
    /** Dot by dot. */
    public byte[] interleaved() {
        int n = colours.length;
        byte[] out = new byte[width * height * n];
        for (int c = 0; c < n; c++) {
            for (int i = 0; i < width * height; i++) {
                out[i * n + c] = colours[c][i];
            }
        }
        return out;
    }

    /** A value of so many bits as one of eight. */
    static int eightBits(int v, int bits) {
        return bits == 8 ? v : bits > 8 ? v >> bits - 8 : v * 255 / ((1 << bits) - 1);
    }
}
