package io.bindprep.pdf.jpx;

/** Bits of packet headers, in which a byte of ones is followed by a stuffed 0 (ISO/IEC 15444-1 B.10.1). */
final class PacketBits {
    private final byte[] data;
    private int at;
    private int last;
    private int left;

    /** Thrown where a tile's packets end. */
    static final class End extends RuntimeException {
        private static final long serialVersionUID = 1L;

        End() {
            super("packets end", null, false, false);
        }
    }

    PacketBits(byte[] data) {
        this.data = data;
    }

    int at() {
        return at;
    }

    int size() {
        return data.length;
    }

    void begin() {
        last = 0;
        left = 0;
    }

    int bit() {
        if (left == 0) {
            next();
        }
        left--;
        return last >> left & 1;
    }

    private void next() {
        left = last == 0xff ? 7 : 8;
        if (at >= data.length) {
            throw new End();
        }
        last = data[at++] & 0xff;
    }

    int bits(int n) {
        int v = 0;
        for (int i = 0; i < n; i++) {
            v = v << 1 | bit();
        }
        return v;
    }

    /** Ends a header at a whole byte. */
    void align() {
        if (last == 0xff) {
            next();
        }
        begin();
    }

    /** Passes a marker where it stands, with its content. */
    void skipMarker(int marker, int length) {
        if (at + 1 < data.length && (data[at] & 0xff) == marker >> 8 && (data[at + 1] & 0xff) == (marker & 0xff)) {
            skip(length);
        }
    }

    void skip(int n) {
        if (n < 0 || n > data.length - at) {
            at = data.length;
            throw new End();
        }
        at += n;
    }
}
