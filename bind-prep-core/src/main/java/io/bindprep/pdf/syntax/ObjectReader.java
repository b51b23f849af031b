package io.bindprep.pdf.syntax;

import java.io.IOException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSDocument;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObjectKey;
import org.jspecify.annotations.Nullable;

/**
 * PDFBox's objects, read several times as fast as its own parser does: the few dictionaries in content, and objects of
 * object streams, which may refer to others.
 */
public final class ObjectReader {
    private static final int MOST_NESTED = 200;
    /** ISO 32000-1:2008, 7.5.4. */
    private static final int MOST_GENERATION = 65535;

    private final Scanner in;
    private final ShownText string = new ShownText();
    private final @Nullable COSDocument document;

    /** Reads objects in content: there are no references in it. */
    ObjectReader(Scanner in) {
        this.in = in;
        document = null;
    }

    /** Reads objects of a document. */
    public ObjectReader(Scanner in, COSDocument document) {
        this.in = in;
        this.document = document;
    }

    /** Error that makes no sense to go on with. */
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

    /** Any object; null for what is none. */
    @Nullable
    public COSBase object(int depth) throws IOException {
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
            case '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '-', '+', '.' -> number();
            case '>', ']', ')' -> null;
            default -> literal(in.word());
        };
    }

    private COSBase number() throws IOException {
        boolean is = in.number();
        long whole = in.whole();
        if (whole < 0) {
            return new COSFloat(is ? in.value() : 0);
        }
        if (document != null && whole > 0) {
            int after = in.position();
            int c = in.skipSpace();
            if (c >= '0' && c <= '9' && in.number() && in.whole() >= 0 && in.whole() <= MOST_GENERATION) {
                long generation = in.whole();
                if (in.skipSpace() == 'R') {
                    in.skip(1);
                    return document.getObjectFromPool(new COSObjectKey(whole, (int) generation));
                }
            }
            in.seek(after);
        }
        return COSInteger.get(whole);
    }

    private @Nullable COSBase literal(long word) {
        return switch (Operators.name(word)) {
            case "true" -> COSBoolean.TRUE;
            case "false" -> COSBoolean.FALSE;
            case "null" -> COSNull.NULL;
            default -> document == null ? null : COSNull.NULL;
        };
    }

    private COSBase string() throws IOException {
        string.clear(false);
        if (!ContentStrings.read(in, string)) {
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
