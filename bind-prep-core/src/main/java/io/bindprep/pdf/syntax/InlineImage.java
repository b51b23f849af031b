package io.bindprep.pdf.syntax;

import java.io.IOException;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/**
 * A picture in the content itself (ISO 32000-1:2008, 8.9.7): its parameters are read, its data is passed.
 *
 * <p>Where the data ends is told as PDFBox tells it: at an EI after which nothing looks like binary data.
 */
final class InlineImage {
    private static final int LOOK = 10;
    private static final long ID = 'I' << 8 | 'D';

    private InlineImage() {}

    /** Passes a picture whose BI was read; returns its parameters, null where its end is not found. */
    static @Nullable COSDictionary read(Scanner in, ObjectReader objects) throws IOException {
        COSDictionary parameters = new COSDictionary();
        while (in.skipSpace() == '/') {
            COSName key = in.name();
            COSBase value = objects.object(0);
            if (value != null) {
                parameters.setItem(key, value);
            }
        }
        if (in.ahead(2) < 2 || (in.at(0) << 8 | in.at(1)) != ID) {
            return null;
        }
        in.skip(2);
        int c = in.peek();
        if (c == '\r' && in.ahead(2) == 2 && in.at(1) == '\n') {
            in.skip(2);
        } else if (c >= 0 && Bytes.is(c, Bytes.WHITE)) {
            in.skip(1);
        }
        return pass(in) ? parameters : null;
    }

    private static boolean pass(Scanner in) throws IOException {
        int last = in.read();
        int c = in.read();
        while (c >= 0) {
            if (last == 'E' && c == 'I' && (in.peek() < 0 || space(in.peek()) && nothingBinary(in))) {
                return true;
            }
            last = c;
            c = in.read();
        }
        return false;
    }

    private static boolean space(int c) {
        return c == '\n' || c == '\r' || c == ' ';
    }

    /** Returns true if what follows may be content: no control characters, and a first word that often follows a picture. */
    private static boolean nothingBinary(Scanner in) throws IOException {
        int n = in.ahead(LOOK);
        int begin = -1;
        int end = -1;
        for (int i = 0; i < n; i++) {
            int b = in.at(i);
            boolean white = b == 0 || b == '\t' || b == '\n' || b == '\r' || b == ' ';
            if (!white && b < ' ' || b > 0x7f) {
                return false;
            }
            if (begin < 0 && !white) {
                begin = i;
            } else if (begin >= 0 && end < 0 && white) {
                end = i;
            }
        }
        if (begin < 0) {
            return true;
        }
        if (end >= 0) {
            return usual(in, begin, end);
        }
        return n < LOOK || n - begin <= 3 || number(in, begin, n);
    }

    private static boolean usual(Scanner in, int begin, int end) {
        int word = 0;
        for (int i = begin; i < Math.min(end, begin + 4); i++) {
            word = word << 8 | in.at(i);
        }
        return word == 'Q' || word == 'S' || word == ('E' << 16 | 'M' << 8 | 'C') || number(in, begin, end);
    }

    private static boolean number(Scanner in, int begin, int end) {
        boolean dot = false;
        for (int i = begin; i < end; i++) {
            int c = in.at(i);
            if (c == '.' && !dot) {
                dot = true;
            } else if (c < '0' || c > '9') {
                return false;
            }
        }
        return true;
    }
}
