package io.bindprep.pdf.jpx;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A code block: a rectangle of a subband's coefficients, and where the bytes of its passes lie. */
final class CodeBlock {
    /** Three a bit plane, of which there are 37 at most, but two. */
    private static final int MOST_PASSES = 109;

    final int x0;
    final int y0;
    final int x1;
    final int y1;
    final List<Segment> segments = new ArrayList<>();
    boolean met;
    int zeroPlanes;
    int lengthBits = 3;

    /** Passes that end together, with their bytes. */
    static final class Segment {
        private final int most;
        private int passes;
        private int[] chunks = {};
        private int bytes;

        private Segment(int most) {
            this.most = most;
        }

        int passes() {
            return passes;
        }

        int room() {
            return most - passes;
        }

        int bytes() {
            return bytes;
        }

        void add(int morePasses, int at, int length) {
            passes += morePasses;
            if (length > 0) {
                chunks = Arrays.copyOf(chunks, chunks.length + 2);
                chunks[chunks.length - 2] = at;
                chunks[chunks.length - 1] = length;
                bytes += length;
            }
        }

        /** Copies its bytes. */
        void copy(byte[] packets, byte[] into) {
            int to = 0;
            for (int i = 0; i < chunks.length; i += 2) {
                System.arraycopy(packets, chunks[i], into, to, chunks[i + 1]);
                to += chunks[i + 1];
            }
        }
    }

    CodeBlock(int x0, int y0, int x1, int y1) {
        this.x0 = x0;
        this.y0 = y0;
        this.x1 = x1;
        this.y1 = y1;
    }

    /** The segment that takes the next passes. */
    Segment open(Coding coding) {
        Segment last = segments.isEmpty() ? null : segments.get(segments.size() - 1);
        if (last != null && last.room() > 0) {
            return last;
        }
        int most = MOST_PASSES;
        if (coding.has(Coding.TERMINATE)) {
            most = 1;
        } else if (coding.has(Coding.BYPASS)) {
            // ten passes come before the first raw one
            most = last == null ? 10 : last.most == 1 || last.most == 10 ? 2 : 1;
        }
        Segment next = new Segment(most);
        segments.add(next);
        return next;
    }
}
