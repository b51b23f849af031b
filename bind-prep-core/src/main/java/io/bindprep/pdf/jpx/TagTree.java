package io.bindprep.pdf.jpx;

import java.util.Arrays;

/** A hierarchy of the least values of a grid, told bit by bit (ISO/IEC 15444-1 B.10.2). */
final class TagTree {
    private final int[] value;
    private final int[] low;
    private final int[] parent;
    private final int[] path = new int[33];

    TagTree(int width, int height) {
        int nodes = 0;
        int w = width;
        int h = height;
        while (true) {
            nodes += w * h;
            if (w * h <= 1) {
                break;
            }
            w = (w + 1) / 2;
            h = (h + 1) / 2;
        }
        value = new int[nodes];
        low = new int[nodes];
        parent = new int[nodes];
        Arrays.fill(value, Integer.MAX_VALUE);
        int begin = 0;
        w = width;
        h = height;
        while (w * h > 1) {
            int above = begin + w * h;
            int across = (w + 1) / 2;
            for (int i = 0; i < w * h; i++) {
                parent[begin + i] = above + i / w / 2 * across + i % w / 2;
            }
            begin = above;
            w = across;
            h = (h + 1) / 2;
        }
        if (nodes > 0) {
            parent[nodes - 1] = -1;
        }
    }

    /** Reads on until it is known whether a leaf's value is below a threshold. */
    boolean below(PacketBits bits, int leaf, int threshold) {
        int depth = 0;
        for (int node = leaf; node >= 0; node = parent[node]) {
            path[depth++] = node;
        }
        int least = 0;
        for (int i = depth - 1; i >= 0; i--) {
            int node = path[i];
            least = Math.max(least, low[node]);
            while (least < threshold && least < value[node]) {
                if (bits.bit() == 1) {
                    value[node] = least;
                } else {
                    least++;
                }
            }
            low[node] = least;
        }
        return value[leaf] < threshold;
    }
}
