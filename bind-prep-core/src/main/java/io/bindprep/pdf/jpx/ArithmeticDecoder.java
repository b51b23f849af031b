package io.bindprep.pdf.jpx;

import java.util.Arrays;

/** The MQ decoder, and the reader of raw bits that some passes use (ISO/IEC 15444-1 annex C). */
final class ArithmeticDecoder {
    static final int RUN = 17;
    static final int UNIFORM = 18;
    private static final int CONTEXTS = 19;

    /** Table C.2: probability, next state after the more and after the less probable symbol, whether they change places. */
    private static final int[][] TABLE = {
        {0x5601, 1, 1, 1}, {0x3401, 2, 6, 0}, {0x1801, 3, 9, 0}, {0x0ac1, 4, 12, 0}, {0x0521, 5, 29, 0},
        {0x0221, 38, 33, 0}, {0x5601, 7, 6, 1}, {0x5401, 8, 14, 0}, {0x4801, 9, 14, 0}, {0x3801, 10, 14, 0},
        {0x3001, 11, 17, 0}, {0x2401, 12, 18, 0}, {0x1c01, 13, 20, 0}, {0x1601, 29, 21, 0}, {0x5601, 15, 14, 1},
        {0x5401, 16, 14, 0}, {0x5101, 17, 15, 0}, {0x4801, 18, 16, 0}, {0x3801, 19, 17, 0}, {0x3401, 20, 18, 0},
        {0x3001, 21, 19, 0}, {0x2801, 22, 19, 0}, {0x2401, 23, 20, 0}, {0x2201, 24, 21, 0}, {0x1c01, 25, 22, 0},
        {0x1801, 26, 23, 0}, {0x1601, 27, 24, 0}, {0x1401, 28, 25, 0}, {0x1201, 29, 26, 0}, {0x1101, 30, 27, 0},
        {0x0ac1, 31, 28, 0}, {0x09c1, 32, 29, 0}, {0x08a1, 33, 30, 0}, {0x0521, 34, 31, 0}, {0x0441, 35, 32, 0},
        {0x02a1, 36, 33, 0}, {0x0221, 37, 34, 0}, {0x0141, 38, 35, 0}, {0x0111, 39, 36, 0}, {0x0085, 40, 37, 0},
        {0x0049, 41, 38, 0}, {0x0025, 42, 39, 0}, {0x0015, 43, 40, 0}, {0x0009, 44, 41, 0}, {0x0005, 45, 42, 0},
        {0x0001, 45, 43, 0}, {0x5601, 46, 46, 0}
    };

    /** The table by state and more probable symbol, so that a symbol is one look-up. */
    private static final int[] PROBABILITY = new int[2 * TABLE.length];

    private static final int[] AFTER_MORE = new int[2 * TABLE.length];
    private static final int[] AFTER_LESS = new int[2 * TABLE.length];

    static {
        for (int i = 0; i < TABLE.length; i++) {
            for (int symbol = 0; symbol < 2; symbol++) {
                PROBABILITY[2 * i + symbol] = TABLE[i][0];
                AFTER_MORE[2 * i + symbol] = 2 * TABLE[i][1] + symbol;
                AFTER_LESS[2 * i + symbol] = 2 * TABLE[i][2] + (TABLE[i][3] == 1 ? 1 - symbol : symbol);
            }
        }
    }

    private final int[] states = new int[CONTEXTS];
    private byte[] data = {};
    private int at;
    private int code;
    private int interval;
    private int left;

    void resetContexts() {
        Arrays.fill(states, 0);
        states[0] = 2 * 4;
        states[RUN] = 2 * 3;
        states[UNIFORM] = 2 * 46;
    }

    /** Begins a segment, behind whose bytes two of ones stand. */
    void begin(byte[] bytes) {
        data = bytes;
        at = 0;
        code = (data[0] & 0xff) << 16;
        next();
        code <<= 7;
        left -= 7;
        interval = 0x8000;
    }

    /** Begins a segment of raw bits, behind whose bytes two of ones stand. */
    void beginRaw(byte[] bytes) {
        data = bytes;
        at = 0;
        code = 0;
        left = 0;
    }

    private void next() {
        if ((data[at] & 0xff) == 0xff) {
            int after = data[at + 1] & 0xff;
            if (after > 0x8f) {
                code += 0xff00;
                left = 8;
            } else {
                at++;
                code += after << 9;
                left = 7;
            }
        } else {
            at++;
            code += (data[at] & 0xff) << 8;
            left = 8;
        }
    }

    int decode(int context) {
        int state = states[context];
        int probability = PROBABILITY[state];
        int symbol = state & 1;
        interval -= probability;
        if (code >>> 16 < probability) {
            if (interval < probability) {
                states[context] = AFTER_MORE[state];
            } else {
                symbol ^= 1;
                states[context] = AFTER_LESS[state];
            }
            interval = probability;
        } else {
            code -= probability << 16;
            if ((interval & 0x8000) != 0) {
                return symbol;
            }
            if (interval < probability) {
                symbol ^= 1;
                states[context] = AFTER_LESS[state];
            } else {
                states[context] = AFTER_MORE[state];
            }
        }
        do {
            if (left == 0) {
                next();
            }
            interval <<= 1;
            code <<= 1;
            left--;
        } while ((interval & 0x8000) == 0);
        return symbol;
    }

    int raw() {
        if (left == 0) {
            boolean stuffed = code == 0xff;
            int value = at < data.length ? data[at] & 0xff : 0xff;
            if (stuffed && value > 0x8f) {
                code = 0xff;
                left = 8;
            } else {
                code = value;
                at++;
                left = stuffed ? 7 : 8;
            }
        }
        left--;
        return code >> left & 1;
    }
}
