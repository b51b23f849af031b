package io.bindprep.pdf.syntax;

import java.io.IOException;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSNull;
import org.jspecify.annotations.Nullable;

/**
 * Splits content into operators and their operands (ISO 32000-1:2008, 7.8.2) as leniently as PDFBox does, but without
 * objects and strings for each: those were half of the time on books of vector drawings.
 *
 * <p>Says whether it came to an orderly end: a string, array or picture never closed swallows the rest of the page, which
 * would then look clear. Stray operands at the end do no harm.
 */
public final class Lexer {
    private final Operands operands = new Operands();
    private final Scanner in;
    private final ObjectReader objects;
    private COSDictionary image = new COSDictionary();
    private boolean broken;
    private boolean unclosed;
    private boolean noise;
    private int takes;

    public Lexer(ContentSource source) {
        in = new Scanner(source);
        objects = new ObjectReader(in);
    }

    /** Content that is all there. */
    public Lexer(byte[] all) {
        in = new Scanner(all);
        objects = new ObjectReader(in);
    }

    /** Offset behind the operator read last, in content that is all there. */
    public int end() {
        return in.position();
    }

    public void reset(ContentSource source) {
        in.reset(source);
        operands.clear();
        broken = false;
        unclosed = false;
    }

    /** The operands of the operator read last. */
    public Operands operands() {
        return operands;
    }

    /** The same without those in front that are more than the operator takes, as readers pass over them. */
    public Operands operandsTaken() {
        operands.last(takes);
        return operands;
    }

    /** The parameters of the picture that the operator BI read last began. */
    public COSDictionary image() {
        return image;
    }

    /** Returns true if something in it was never closed or made no sense. */
    public boolean broken() {
        return broken;
    }

    /** Returns true if the operator read last is none and could not be a word of any language. */
    public boolean noise() {
        return noise;
    }

    /**
     * Returns true if all that is wrong is a string that the end of the content leaves open, or an array of numbers and
     * strings: three readers show what stands before, and nothing else. In other brackets some go on with what follows.
     */
    public boolean unclosed() {
        return unclosed;
    }

    /** The next operator; null at the end. */
    @Nullable
    public String next() throws IOException {
        operands.clear();
        try {
            while (true) {
                int c = in.skipSpace();
                if (c < 0) {
                    return null;
                }
                String operator = token(c);
                if (operator != null) {
                    return operator;
                }
            }
        } catch (ObjectReader.Garbage e) {
            broken = true;
            return null;
        }
    }

    /** Reads a token that begins here; returns it where it is an operator, else null. */
    private @Nullable String token(int c) throws IOException {
        switch (c) {
            case '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '-', '+', '.' -> {
                if (in.number()) {
                    operands.add(in.value());
                } else {
                    operands.put(COSNull.NULL);
                }
            }
            case '/' -> operands.put(in.name());
            case '[' -> array(operands.add(true));
            case '(' -> string(operands.add(false));
            case '<' -> {
                if (in.ahead(2) == 2 && in.at(1) == '<') {
                    operands.put(objects.dictionary(0));
                } else {
                    string(operands.add(false));
                }
            }
            case ']' -> {
                in.skip(1);
                operands.put(COSNull.NULL);
            }
            default -> {
                return word();
            }
        }
        return null;
    }

    private static boolean isPrintable(long word) {
        for (long rest = word; rest != 0; rest >>>= 8) {
            long c = rest & 0xff;
            if (c <= ' ' || c > '~') {
                return false;
            }
        }
        return true;
    }

    private @Nullable String word() throws IOException {
        long read = in.operator();
        int place = Operators.find(read);
        if (place < 0) {
            noise = !isPrintable(read);
            takes = Integer.MAX_VALUE;
            return Operators.UNKNOWN;
        }
        takes = Operators.takesAt(place);
        String word = Operators.nameAt(place);
        switch (word) {
            case "true" -> operands.put(COSBoolean.TRUE);
            case "false" -> operands.put(COSBoolean.FALSE);
            case "null" -> operands.put(COSNull.NULL);
            case "BI" -> {
                COSDictionary parameters = InlineImage.read(in, objects);
                if (parameters == null) {
                    throw new ObjectReader.Garbage("a picture does not end");
                }
                image = parameters;
                return word;
            }
            case "ID" -> throw new ObjectReader.Garbage("data of a picture that never began");
            default -> {
                return word;
            }
        }
        return null;
    }

    private void string(ShownText into) throws IOException {
        boolean literal = in.peek() == '(';
        if (!ContentStrings.read(in, into)) {
            unclosed = literal;
            throw new ObjectReader.Garbage("a string is never closed");
        }
    }

    /** Strings and numbers; no operator takes an array with anything else in it, so that is passed. */
    private void array(ShownText into) throws IOException {
        in.skip(1);
        boolean operands = true;
        for (int c = in.skipSpace(); c != ']'; c = in.skipSpace()) {
            switch (c) {
                case '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', '-', '+', '.' ->
                    into.add(in.number() ? in.value() : 0);
                case '(' -> string(into);
                case '<' -> {
                    if (in.ahead(2) == 2 && in.at(1) == '<') {
                        objects.dictionary(1);
                    } else {
                        string(into);
                    }
                }
                case '>', ')' -> throw new ObjectReader.Garbage("a bracket closes what was never opened");
                case -1 -> {
                    unclosed = operands;
                    throw new ObjectReader.Garbage("an array is never closed");
                }
                default -> {
                    operands = false;
                    objects.object(1);
                }
            }
        }
        in.skip(1);
    }
}
