package io.bindprep.pdf.syntax;

import java.io.IOException;

/** Strings in content: ISO 32000-1:2008, 7.3.4, with PDFBox's leniency. */
final class ContentStrings {
    private static final byte[] HEX = new byte[256];

    static {
        for (int c = 0; c < HEX.length; c++) {
            HEX[c] = (byte) Character.digit(c, 16);
        }
    }

    private ContentStrings() {}

    /** The value of a hexadecimal digit; -1 where it is none. */
    static int digit(int c) {
        return HEX[c];
    }

    /** Reads a literal or hexadecimal string that begins here into parts; false where it is never closed. */
    static boolean read(Bytes in, ShownText into) throws IOException {
        into.beginString();
        boolean closed = in.read() == '<' ? hex(in, into) : literal(in, into);
        into.endString();
        return closed;
    }

    private static boolean hex(Bytes in, ShownText into) throws IOException {
        int high = -1;
        for (int c = in.read(); c >= 0; c = in.read()) {
            int digit = HEX[c];
            if (digit >= 0) {
                if (high < 0) {
                    high = digit;
                } else {
                    into.add(high << 4 | digit);
                    high = -1;
                }
            } else if (c == '>') {
                if (high >= 0) {
                    into.add(high << 4);
                }
                return true;
            } else if (!Bytes.is(c, Bytes.WHITE) && c != '\b' || c == 0) {
                high = -1; // an odd digit before garbage is dropped with it
                while (c >= 0 && c != '>') {
                    c = in.read();
                }
                return c >= 0;
            }
        }
        return false;
    }

    private static boolean literal(Bytes in, ShownText into) throws IOException {
        int open = 1;
        for (int c = in.read(); c >= 0; c = in.read()) {
            if (c == ')') {
                open = endsHere(in, open - 1) ? 0 : open - 1;
                if (open == 0) {
                    return true;
                }
                into.add(c);
            } else if (c == '\\') {
                c = in.read();
                if (c == ')' && endsHere(in, open)) {
                    into.add('\\');
                    return true;
                }
                if (c >= 0) {
                    escaped(in, c, into);
                }
            } else {
                open += c == '(' ? 1 : 0;
                into.add(c);
            }
        }
        return false;
    }

    /** A bracket too many was opened before, if after this one the line ends and a name or bracket begins the next. */
    private static boolean endsHere(Bytes in, int open) throws IOException {
        if (open == 0) {
            return true;
        }
        if (in.ahead(3) < 3 || in.at(0) != '\r' && in.at(0) != '\n') {
            return false;
        }
        int next = in.at(0) == '\r' && in.at(1) == '\n' ? in.at(2) : in.at(1);
        return next == '/' || next == '>';
    }

    private static void escaped(Bytes in, int c, ShownText into) throws IOException {
        switch (c) {
            case 'n' -> into.add('\n');
            case 'r' -> into.add('\r');
            case 't' -> into.add('\t');
            case 'b' -> into.add('\b');
            case 'f' -> into.add('\f');
            case '\n', '\r' -> {
                while (in.peek() == '\n' || in.peek() == '\r') {
                    in.skip(1);
                }
            }
            case '0', '1', '2', '3', '4', '5', '6', '7' -> {
                int octal = c - '0';
                for (int i = 0; i < 2 && in.peek() >= '0' && in.peek() <= '7'; i++) {
                    octal = octal * 8 + in.read() - '0';
                }
                into.add(octal);
            }
            default -> into.add(c);
        }
    }
}
