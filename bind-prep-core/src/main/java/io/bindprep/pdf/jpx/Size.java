package io.bindprep.pdf.jpx;

import java.io.IOException;

/**
 * Size of a picture, of its tiles and of its components (marker SIZ, ISO/IEC 15444-1 A.5.1), on the reference grid.
 *
 * @param depth bits of each component
 * @param dx distance of a component's samples
 */
record Size(
        int x0,
        int y0,
        int x1,
        int y1,
        int tileX0,
        int tileY0,
        int tileWidth,
        int tileHeight,
        int[] depth,
        boolean[] signed,
        int[] dx,
        int[] dy) {
    /** DeviceN has at most 32 colorants; more is no picture of a page. */
    private static final int MOST_COMPONENTS = 64;

    static final int MOST_BITS = 16;

    static Size read(ByteReader in) throws IOException {
        in.u16(); // capabilities
        int x1 = in.u31();
        int y1 = in.u31();
        int x0 = in.u31();
        int y0 = in.u31();
        int tw = in.u31();
        int th = in.u31();
        int tx0 = in.u31();
        int ty0 = in.u31();
        int n = in.u16();
        boolean sound = x0 < x1 && y0 < y1 && tw > 0 && th > 0 && tx0 <= x0 && ty0 <= y0;
        if (!sound || n == 0 || n > MOST_COMPONENTS || (long) tx0 + tw <= x0 || (long) ty0 + th <= y0) {
            throw new IOException("its size makes no sense");
        }
        int[] depth = new int[n];
        boolean[] signed = new boolean[n];
        int[] dx = new int[n];
        int[] dy = new int[n];
        for (int c = 0; c < n; c++) {
            int bits = in.u8();
            depth[c] = (bits & 0x7f) + 1;
            signed[c] = bits > 0x7f;
            dx[c] = in.u8();
            dy[c] = in.u8();
            if (dx[c] == 0 || dy[c] == 0) {
                throw new IOException("its size makes no sense");
            }
        }
        return new Size(x0, y0, x1, y1, tx0, ty0, tw, th, depth, signed, dx, dy);
    }

    int components() {
        return depth.length;
    }

    int tilesAcross() {
        return up((long) x1 - tileX0, tileWidth);
    }

    int tilesDown() {
        return up((long) y1 - tileY0, tileHeight);
    }

    int tileLeft(int tile) {
        return (int) Math.max(x0, tileX0 + (long) (tile % tilesAcross()) * tileWidth);
    }

    int tileTop(int tile) {
        return (int) Math.max(y0, tileY0 + (long) (tile / tilesAcross()) * tileHeight);
    }

    int tileRight(int tile) {
        return (int) Math.min(x1, tileX0 + (long) (tile % tilesAcross() + 1) * tileWidth);
    }

    int tileBottom(int tile) {
        return (int) Math.min(y1, tileY0 + (long) (tile / tilesAcross() + 1) * tileHeight);
    }

    /** Distance of the finest component's samples. */
    int finestX() {
        return finest(dx);
    }

    int finestY() {
        return finest(dy);
    }

    private static int finest(int[] steps) {
        int least = Integer.MAX_VALUE;
        for (int s : steps) {
            least = Math.min(least, s);
        }
        return least;
    }

    /** A quotient of numbers that are not negative, rounded up. */
    static int up(long a, long b) {
        return (int) ((a + b - 1) / b);
    }
}
