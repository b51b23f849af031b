package io.bindprep.pdf;

import java.io.IOException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/** The few dictionaries in content, of marked content and of pictures, as PDFBox's objects. */
final class ObjectReader {
    private static final int MOST_NESTED = 64;

    private final Scanner in;
    private final Parts string = new Parts();

    ObjectReader(Scanner in) {
        this.in = in;
    }

    /** What does not make sense to go on with. */
    static final class Garbage extends IOException {
        private static final long serialVersionUID = 1L;

        Garbage(String what) {
            super(what);
        }
    }

    /** A dictionary that begins here. */
    COSDictionary dictionary(int depth) throws IOException {
        COSDictionary found = new COSDictionary();
        in.skip(2);
        while (true) {
            int c = in.skipSpace();
            if (c == '/') {
                COSName key = in.name();
                COSBase value = object(depth + 1);
                if (value != null) {
                    found.setItem(key, value);
                }
            } else if (c == '>') {
                in.skip(in.ahead(2) == 2 && in.at(1) == '>' ? 2 : 1);
                return found;
            } else if (in.read() < 0) {
                throw new Garbage("a dictionary is never closed");
            }
        }
    }

    /** Any object but a reference; null for null and for what is none. */
    @Nullable
    COSBase object(int depth) throws IOException {
        if (depth > MOST_NESTED) {
            throw new Garbage("objects are nested too deep");
        }
        int c = in.skipSpace();
        return switch (c) {
            case -1 -> throw new Garbage("an object is missing");
            case '/' -> in.name();
            case '[' -> array(depth);
            case '(' -> string();
            case '<' -> in.ahead(2) == 2 && in.at(1) == '<' ? dictionary(depth) : string();
            case '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '-', '+', '.' ->
                new COSFloat(in.number() ? in.value() : 0);
            case '>', ']', ')' -> null;
            default -> literal(in.word());
        };
    }

    private static @Nullable COSBase literal(long word) {
        String name = Operators.name(word);
        return name.equals("true") ? COSBoolean.TRUE : name.equals("false") ? COSBoolean.FALSE : null;
    }

    private COSBase string() throws IOException {
        string.clear(false);
        if (!Strings.read(in, string)) {
            throw new Garbage("a string is never closed");
        }
        return string.toCos();
    }

    private COSArray array(int depth) throws IOException {
        COSArray found = new COSArray();
        in.skip(1);
        while (in.skipSpace() != ']') {
            COSBase item = object(depth + 1);
            if (item != null) {
                found.add(item);
            } else if (in.peek() == '>' || in.peek() == ')') {
                in.skip(1);
            }
        }
        in.skip(1);
        return found;
    }
}
