package io.bindprep.pdf.jpx;

import java.io.IOException;

/** Reads numbers, the most significant byte first, from a range of bytes. */
final class ByteReader {
    private final byte[] data;
    private final int end;
    private int at;

    ByteReader(byte[] data, int from, int end) {
        this.data = data;
        this.at = from;
        this.end = Math.min(end, data.length);
    }

    int at() {
        return at;
    }

    int left() {
        return end - at;
    }

    int u8() throws IOException {
        if (at >= end) {
            throw new IOException("breaks off");
        }
        return data[at++] & 0xff;
    }

    int u16() throws IOException {
        return u8() << 8 | u8();
    }

    /** Size or place; beyond what an int holds nothing is read. */
    int u31() throws IOException {
        int v = u16() << 16 | u16();
        if (v < 0) {
            throw new IOException("a number in it is too large");
        }
        return v;
    }

    int i32() throws IOException {
        return u16() << 16 | u16();
    }

    void skip(long n) throws IOException {
        if (n < 0 || n > left()) {
            throw new IOException("breaks off");
        }
        at += (int) n;
    }

    /** The next bytes as a range of their own. */
    ByteReader part(int n) throws IOException {
        ByteReader part = new ByteReader(data, at, at + n);
        skip(n);
        return part;
    }
}
