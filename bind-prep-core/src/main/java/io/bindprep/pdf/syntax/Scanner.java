package io.bindprep.pdf.syntax;

import java.io.IOException;
import java.util.Arrays;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/** The bytes of content and the smallest tokens in them, read as leniently as PDFBox reads them. */
public final class Scanner extends Bytes {
    /** No number is longer on purpose. */
    private static final int LONG_NUMBER = 48;
    /** As many digits as always fit a long. */
    private static final int MOST_DIGITS = 18;

    /** Powers of ten up to this are exact. */
    private static final int MOST_SCALE = 22;

    private static final double[] TEN = new double[MOST_SCALE + 1];
    private static final int NAMES = 1024;

    static {
        TEN[0] = 1;
        for (int i = 1; i < TEN.length; i++) {
            TEN[i] = TEN[i - 1] * 10;
        }
    }

    private float value;
    /** Digits of the number read last, as one whole number. */
    private long digits;
    /** Count of those behind the point. */
    private int scale;
    /** Count of those before the point that are not held. */
    private int beyond;

    private boolean point;
    private long digitsOnly;
    private final byte[] word = new byte[256];
    private final @Nullable COSName[] names = new @Nullable COSName[NAMES];
    private final byte[][] spelt = new byte[NAMES][];

    Scanner(ContentSource source) {
        super(source);
    }

    public Scanner(byte[] all) {
        super(all);
    }

    /** The number read last. */
    float value() {
        return value;
    }

    /** The number read last where it has no sign, no point and few enough digits; else -1. */
    public long whole() {
        return digitsOnly;
    }

    /** Reads a number that begins here; false for a plus sign alone, which is none. */
    public boolean number() throws IOException {
        int most = at + ahead(LONG_NUMBER);
        int first = buffer[at];
        boolean signed = first == '-' || first == '+';
        if (!digits(signed ? at + 1 : at, most)) {
            return none(first, signed);
        }
        digitsOnly = signed || point || beyond > 0 ? -1 : digits;
        float size = size();
        value = first == '-' ? 0 - size : size; // no zero below zero
        return true;
    }

    /** Reads digits and a point among them; false where there is no digit. What follows a minus sign behind a digit counts for nothing. */
    private boolean digits(int from, int most) throws IOException {
        boolean any = false;
        boolean dot = false;
        long number = 0;
        int seen = 0;
        int places = 0;
        int more = 0;
        int p = from;
        for (; p < most; p++) {
            int c = buffer[p];
            if (isDigit(c)) {
                any = true;
                seen += number == 0 && c == '0' ? 0 : 1; // zeros in front do not count
                if (seen <= MOST_DIGITS && places < MOST_SCALE) {
                    number = number * 10 + c - '0';
                    places += dot ? 1 : 0;
                } else if (!dot) {
                    more++;
                }
            } else if (c == '.' && !dot) {
                dot = true;
            } else if (c != '-') {
                break;
            } else if (any) {
                p = endOfNumber(p, most);
                break;
            }
        }
        at = p;
        while (p == most && isDigit(peek())) {
            more += dot ? 0 : 1;
            at++;
        }
        digits = number;
        point = dot;
        scale = places;
        beyond = more;
        return any;
    }

    private int endOfNumber(int from, int most) {
        int p = from;
        while (p < most && (isDigit(buffer[p]) || buffer[p] == '.' || buffer[p] == '-')) {
            p++;
        }
        return p;
    }

    /** A sign or a point without a digit is zero, as PDFBox has it; both together are nothing at all. */
    private boolean none(int first, boolean signed) throws IOException {
        digitsOnly = -1;
        if (signed && point) {
            throw new IOException("no number");
        }
        value = 0;
        return first != '+';
    }

    /** The number without its sign, as PDFBox holds it: in single precision, none too small for that. */
    private float size() {
        double v = digits / TEN[scale];
        if (beyond > 0) {
            v *= Math.pow(10, beyond);
        }
        float f = (float) Math.min(v, Float.MAX_VALUE);
        return f < Float.MIN_NORMAL ? 0 : f;
    }

    private static boolean isDigit(int c) {
        return c >= '0' && c <= '9';
    }

    /** Reads a name that begins here with its slash. */
    COSName name() throws IOException {
        at++;
        int n = 0;
        byte[] bytes = word;
        int hash = 0;
        for (int c = peek(); c >= 0 && !is(c, ENDS_WORD); c = peek()) {
            at++;
            if (c == '#' && ahead(2) == 2) {
                int high = ContentStrings.digit(at(0));
                int low = ContentStrings.digit(at(1));
                if (high >= 0 && low >= 0) {
                    c = high << 4 | low;
                    at += 2;
                }
            }
            if (n == bytes.length) {
                bytes = Arrays.copyOf(bytes, n * 2);
            }
            bytes[n++] = (byte) c;
            hash = hash * 31 + c;
        }
        int slot = hash & NAMES - 1;
        COSName known = names[slot];
        if (known != null && Arrays.equals(spelt[slot], 0, spelt[slot].length, bytes, 0, n)) {
            return known;
        }
        byte[] own = Arrays.copyOf(bytes, n);
        COSName name = COSName.getPDFName(own);
        names[slot] = name;
        spelt[slot] = own;
        return name;
    }

    /** Passes a word up to the next delimiter; returns its first eight bytes, packed. */
    long word() throws IOException {
        return packed(ENDS_WORD);
    }

    /** Passes an operator, which a digit ends too, except in d0 and d1; returns its first eight bytes, packed. */
    long operator() throws IOException {
        int c = peek();
        if (c == 'n' || c == 't' || c == 'f' || c == 'B') {
            return packed(ENDS_WORD);
        }
        long packed = packed(ENDS_OPERATOR);
        if ((packed & 0xff) == 'd' && (peek() == '0' || peek() == '1')) {
            packed = packed << 8 | read();
        }
        return packed;
    }

    private long packed(int delimiter) throws IOException {
        long packed = 0;
        int n = 0;
        for (int c = peek(); c >= 0 && !is(c, delimiter); c = peek()) {
            at++;
            if (n++ < 8) {
                packed = packed << 8 | c;
            }
        }
        return packed;
    }
}
