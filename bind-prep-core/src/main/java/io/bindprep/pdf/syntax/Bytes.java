package io.bindprep.pdf.syntax;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** A window on content, moved along as it is read; or bytes that are all there, to go about in. */
public class Bytes {
    private static final int SIZE = 16 * 1024;
    static final byte WHITE = 1;
    static final byte ENDS_WORD = 2;
    static final byte ENDS_OPERATOR = 4;
    private static final byte[] KIND = new byte[256];

    static {
        mark("\0\t\f\n\r ", WHITE | ENDS_WORD | ENDS_OPERATOR);
        mark("[</(%", ENDS_WORD | ENDS_OPERATOR);
        mark(">])", ENDS_WORD);
        mark("0123456789", ENDS_OPERATOR);
    }

    final byte[] buffer;
    int at;
    private int end;
    private @Nullable ContentSource source;

    Bytes(ContentSource source) {
        buffer = new byte[SIZE];
        this.source = source;
    }

    Bytes(byte[] all) {
        buffer = all;
        end = all.length;
    }

    private static void mark(String characters, int kind) {
        for (int i = 0; i < characters.length(); i++) {
            KIND[characters.charAt(i)] |= (byte) kind;
        }
    }

    /** Returns true if a byte, not -1, is white space or ends a word or operator. */
    static boolean is(int c, int kind) {
        return (KIND[c] & kind) != 0;
    }

    void reset(ContentSource next) {
        source = next;
        at = 0;
        end = 0;
    }

    private boolean more() throws IOException {
        if (source == null) {
            return false;
        }
        at = 0;
        end = source.fill(buffer, 0);
        return end > 0;
    }

    int read() throws IOException {
        return at < end || more() ? buffer[at++] & 0xff : -1;
    }

    int peek() throws IOException {
        return at < end || more() ? buffer[at] & 0xff : -1;
    }

    /** Number of the next bytes, at most n, that there are to look at. */
    int ahead(int n) throws IOException {
        if (end - at < n && source != null) {
            System.arraycopy(buffer, at, buffer, 0, end - at);
            end -= at;
            at = 0;
            while (end < n) {
                int came = source.fill(buffer, end);
                if (came == 0) {
                    break;
                }
                end += came;
            }
        }
        return Math.min(n, end - at);
    }

    /** A byte that {@link #ahead} has said to be there. */
    int at(int offset) {
        return buffer[at + offset] & 0xff;
    }

    public int position() {
        return at;
    }

    /** Goes to a position, where all bytes are there. */
    public void seek(int position) {
        at = Math.min(position, end);
    }

    void skip(int n) {
        at += n;
    }

    /** Passes white space and comments; returns the byte that follows without taking it, -1 at the end. */
    public int skipSpace() throws IOException {
        int c = peek();
        while (c >= 0 && (c == '%' || is(c, WHITE))) {
            at++;
            if (c == '%') {
                while (c >= 0 && c != '\n' && c != '\r') {
                    c = read();
                }
            }
            c = peek();
        }
        return c;
    }
}
