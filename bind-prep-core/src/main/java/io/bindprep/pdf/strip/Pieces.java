package io.bindprep.pdf.strip;

import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Sets of dots that hang together by a side or a corner. */
final class Pieces {
    /** Fewer dots that hang together than this are dust: 0.12 square millimetres. */
    private static final int LEAST_DOTS = 3;

    private final boolean[] left;
    private final int w;
    private final int h;
    private int[] piece = new int[64];
    private int count;

    private Pieces(boolean[] set, int w) {
        this.left = set.clone();
        this.w = w;
        this.h = w == 0 ? 0 : set.length / w;
    }

    /** The pieces of what is set in rows of w dots, each as its dots' places. */
    static List<int[]> of(boolean[] set, int w) {
        Pieces pieces = new Pieces(set, w);
        List<int[]> all = new ArrayList<>();
        for (int at = pieces.next(0); at >= 0; at = pieces.next(at + 1)) {
            all.add(Arrays.copyOf(pieces.piece, pieces.count));
        }
        return all;
    }

    /** Returns true if there is a piece. */
    static boolean any(boolean[] set, int w) {
        return new Pieces(set, w).next(0) >= 0;
    }

    /** Gathers the next piece, from a place on; returns its first place, or -1 where there is none. */
    private int next(int from) {
        for (int start = from; start < left.length; start++) {
            if (left[start]) {
                gather(start);
                if (count >= LEAST_DOTS) {
                    return start;
                }
            }
        }
        return -1;
    }

    /** Gathers a dot and all that hang together with it: each dot gathered hands in its neighbours. */
    private void gather(int start) {
        count = 0;
        take(start);
        for (int done = 0; done < count; done++) {
            int x = piece[done] % w;
            int y = piece[done] / w;
            for (int ny = Math.max(0, y - 1); ny <= Math.min(h - 1, y + 1); ny++) {
                for (int nx = Math.max(0, x - 1); nx <= Math.min(w - 1, x + 1); nx++) {
                    if (left[ny * w + nx]) {
                        take(ny * w + nx);
                    }
                }
            }
        }
    }

    private void take(int at) {
        left[at] = false;
        if (count == piece.length) {
            piece = Arrays.copyOf(piece, count * 2);
        }
        piece[count++] = at;
    }

    /** Bounds of a piece in dots. */
    static Rectangle box(int[] piece, int w) {
        Rectangle box = new Rectangle(piece[0] % w, piece[0] / w, 1, 1);
        for (int at : piece) {
            box.add(new Rectangle(at % w, at / w, 1, 1));
        }
        return box;
    }
}
