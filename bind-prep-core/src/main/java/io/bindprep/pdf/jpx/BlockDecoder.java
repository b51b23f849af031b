package io.bindprep.pdf.jpx;

import java.util.Arrays;

/** Decodes a code block's bit planes into coefficients (ISO/IEC 15444-1 annex D). */
final class BlockDecoder {
    private static final int NE = 1;
    private static final int SE = 2;
    private static final int SW = 4;
    private static final int NW = 8;
    private static final int N = 0x10;
    private static final int E = 0x20;
    private static final int S = 0x40;
    private static final int W = 0x80;
    private static final int AROUND = 0xff;
    /** Signs of the four neighbours; set for a negative one. */
    private static final int MINUS_N = 0x100;

    private static final int MINUS_E = 0x200;
    private static final int MINUS_S = 0x400;
    private static final int MINUS_W = 0x800;
    private static final int FOUND = 0x1000;
    private static final int REFINED = 0x2000;
    private static final int VISITED = 0x4000;
    /** Neighbours below, which stripes that do not look down leave out. */
    private static final int BELOW = S | SE | SW | MINUS_S;

    private static final int STRIPE = 4;
    /** More bit planes than an int holds beside the half that is told by none. */
    private static final int MOST_PLANES = 30;

    /** Contexts by the eight neighbours: of bands LL and LH, HL, HH. */
    private static final byte[][] ZERO_CONTEXTS = {zeroContexts(0), zeroContexts(1), zeroContexts(2)};
    /** Contexts of signs by what is in the bits 4 to 11 of a flag; the bit 7 flips the sign. */
    private static final byte[] SIGN_CONTEXTS = signContexts();

    private final ArithmeticDecoder coder = new ArithmeticDecoder();
    private int[] values = {};
    private int[] flags = {};
    private byte[] zero = ZERO_CONTEXTS[0];
    private int width;
    private int height;
    private int row;
    private boolean causal;
    private boolean raw;
    private int one;

    private static byte[] zeroContexts(int kind) {
        byte[] table = new byte[256];
        for (int f = 0; f < 256; f++) {
            int across = Integer.bitCount(f & (E | W));
            int down = Integer.bitCount(f & (N | S));
            int corners = Integer.bitCount(f & (NE | SE | SW | NW));
            table[f] = (byte)
                    (kind == 2
                            ? corner(across + down, corners)
                            : kind == 1 ? straight(down, across, corners) : straight(across, down, corners));
        }
        return table;
    }

    private static int straight(int across, int down, int corners) {
        if (across == 2) {
            return 8;
        }
        if (across == 1) {
            return down > 0 ? 7 : corners > 0 ? 6 : 5;
        }
        return down > 0 ? 2 + down : Math.min(2, corners);
    }

    private static int corner(int sides, int corners) {
        return switch (corners) {
            case 0 -> Math.min(2, sides);
            case 1 -> 3 + Math.min(2, sides);
            case 2 -> 6 + Math.min(1, sides);
            default -> 8;
        };
    }

    private static byte[] signContexts() {
        byte[] table = new byte[256];
        for (int i = 0; i < 256; i++) {
            int f = i << 4;
            int across = sign(f, E, MINUS_E) + sign(f, W, MINUS_W);
            int down = sign(f, N, MINUS_N) + sign(f, S, MINUS_S);
            int h = Integer.signum(across);
            int v = Integer.signum(down);
            boolean flip = h < 0 || h == 0 && v < 0;
            int context = h == 0 ? 9 + Math.abs(v) : 12 + h * v;
            table[i] = (byte) (context | (flip ? 0x80 : 0));
        }
        return table;
    }

    private static int sign(int f, int found, int minus) {
        return (f & found) == 0 ? 0 : (f & minus) == 0 ? 1 : -1;
    }

    /**
     * Coefficients of a block, row by row, in halves: the last bit is the half by which a value lies within its step. They
     * hold until the next block.
     *
     * @param raised bits by which a region of interest is raised
     */
    int[] decode(CodeBlock block, Band band, Coding coding, int raised, byte[] packets) {
        width = block.x1 - block.x0;
        height = block.y1 - block.y0;
        row = width + 2;
        if (values.length < width * height) {
            values = new int[width * height];
        }
        if (flags.length < row * (height + 2)) {
            flags = new int[row * (height + 2)];
        }
        Arrays.fill(values, 0, width * height, 0);
        Arrays.fill(flags, 0, row * (height + 2), 0);
        zero = ZERO_CONTEXTS[band.right() + band.below() == 2 ? 2 : band.right()];
        causal = coding.has(Coding.CAUSAL);
        int own = band.planes() - block.zeroPlanes;
        int planes = raised + own;
        if (planes > MOST_PLANES) {
            throw new IllegalArgumentException("a block has too many bit planes");
        }
        coder.resetContexts();
        int pass = 2;
        for (CodeBlock.Segment segment : block.segments) {
            byte[] bytes = new byte[segment.bytes() + 2];
            segment.copy(packets, bytes);
            bytes[bytes.length - 2] = -1;
            bytes[bytes.length - 1] = -1;
            raw = coding.has(Coding.BYPASS) && planes <= own - 4 && pass < 2;
            if (raw) {
                coder.beginRaw(bytes);
            } else {
                coder.begin(bytes);
            }
            for (int i = 0; i < segment.passes() && planes >= 1; i++) {
                one = 1 << planes;
                switch (pass) {
                    case 0 -> significance();
                    case 1 -> refinement();
                    default -> cleanup(coding.has(Coding.SEGMENT_SYMBOLS));
                }
                if (coding.has(Coding.RESET)) {
                    coder.resetContexts();
                }
                if (++pass == 3) {
                    pass = 0;
                    planes--;
                }
            }
        }
        if (raised > 0) {
            lower(raised);
        }
        return values;
    }

    private void lower(int raised) {
        for (int i = 0; i < width * height; i++) {
            int size = Math.abs(values[i]);
            if (size >= 1L << raised) {
                values[i] = values[i] < 0 ? -(size >> raised) : size >> raised;
            }
        }
    }

    /** A flag as its stripe sees it. */
    private int seen(int f, int y) {
        return causal && (y & STRIPE - 1) == STRIPE - 1 ? f & ~BELOW : f;
    }

    private void significance() {
        for (int y0 = 0; y0 < height; y0 += STRIPE) {
            int y1 = Math.min(y0 + STRIPE, height);
            for (int x = 0; x < width; x++) {
                for (int y = y0; y < y1; y++) {
                    int at = (y + 1) * row + x + 1;
                    int f = seen(flags[at], y);
                    if ((f & AROUND) == 0 || (f & FOUND) != 0) {
                        continue;
                    }
                    if (raw) {
                        if (coder.raw() == 1) {
                            found(at, x, y, coder.raw());
                        }
                    } else if (coder.decode(zero[f & AROUND]) == 1) {
                        found(at, x, y, sign(f));
                    }
                    flags[at] |= VISITED;
                }
            }
        }
    }

    private int sign(int f) {
        int context = SIGN_CONTEXTS[f >> 4 & 0xff];
        return coder.decode(context & 0x7f) ^ context >> 7 & 1;
    }

    private void found(int at, int x, int y, int minus) {
        int half = one | one >> 1;
        values[y * width + x] = minus == 1 ? -half : half;
        int[] f = flags;
        f[at - row - 1] |= SE;
        f[at - row + 1] |= SW;
        f[at + row - 1] |= NE;
        f[at + row + 1] |= NW;
        if (minus == 1) {
            f[at - row] |= S | MINUS_S;
            f[at + row] |= N | MINUS_N;
            f[at - 1] |= E | MINUS_E;
            f[at + 1] |= W | MINUS_W;
        } else {
            f[at - row] |= S;
            f[at + row] |= N;
            f[at - 1] |= E;
            f[at + 1] |= W;
        }
        f[at] |= FOUND;
    }

    private void refinement() {
        int half = one >> 1;
        for (int y0 = 0; y0 < height; y0 += STRIPE) {
            int y1 = Math.min(y0 + STRIPE, height);
            for (int x = 0; x < width; x++) {
                for (int y = y0; y < y1; y++) {
                    int at = (y + 1) * row + x + 1;
                    if ((flags[at] & (FOUND | VISITED)) != FOUND) {
                        continue;
                    }
                    int f = seen(flags[at], y);
                    int context = (f & REFINED) != 0 ? 16 : (f & AROUND) != 0 ? 15 : 14;
                    int bit = raw ? coder.raw() : coder.decode(context);
                    int i = y * width + x;
                    values[i] += bit == 1 == values[i] > 0 ? half : -half;
                    flags[at] |= REFINED;
                }
            }
        }
    }

    private void cleanup(boolean symbols) {
        for (int y0 = 0; y0 < height; y0 += STRIPE) {
            int y1 = Math.min(y0 + STRIPE, height);
            for (int x = 0; x < width; x++) {
                int y = y0;
                boolean begun = false;
                if (y1 - y0 == STRIPE && untouched(x, y0)) {
                    if (coder.decode(ArithmeticDecoder.RUN) == 0) {
                        continue;
                    }
                    y += coder.decode(ArithmeticDecoder.UNIFORM) << 1;
                    y += coder.decode(ArithmeticDecoder.UNIFORM);
                    begun = true;
                }
                for (; y < y1; y++) {
                    int at = (y + 1) * row + x + 1;
                    int f = seen(flags[at], y);
                    if (begun || (f & (FOUND | VISITED)) == 0 && coder.decode(zero[f & AROUND]) == 1) {
                        begun = false;
                        found(at, x, y, sign(f));
                    }
                    flags[at] &= ~VISITED;
                }
            }
        }
        for (int i = 0; symbols && i < 4; i++) {
            coder.decode(ArithmeticDecoder.UNIFORM);
        }
    }

    /** Returns true if of a stripe's column neither a coefficient nor a neighbour is known. */
    private boolean untouched(int x, int y0) {
        int at = (y0 + 1) * row + x + 1;
        int last = seen(flags[at + 3 * row], y0 + 3);
        return ((flags[at] | flags[at + row] | flags[at + 2 * row] | last) & (FOUND | VISITED | AROUND)) == 0;
    }
}
