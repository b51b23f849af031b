package io.bindprep.paint;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Bitmaps of the Basic Multilingual Plane, 16 dots high and 8 or 16 wide, from the files of GNU Unifont.
 *
 * <p>They are coarse, but one small file holds a glyph for nearly every letter in use.
 */
final class Unifont {
    /** Dots of a glyph from top to bottom, which are an em. */
    static final int HEIGHT = 16;

    /** Rows of dots below the base line. */
    static final int BELOW = 2;

    private static final int PLANE = 0x10000;
    private static final int CODE = 5; // four hexadecimal digits and a colon

    private final byte[] file;
    private final int[] places = new int[PLANE];
    private final Map<Integer, Integer> combining = new HashMap<>();

    private Unifont(byte[] file) {
        this.file = file;
    }

    /**
     * One glyph.
     *
     * @param rows bits of each row, the leftmost dot the highest of them
     * @param width dots across
     * @param shift dots that it is moved right by; below 0 it stands over the letter before
     * @param advances false where it takes no room of its own
     */
    record Glyph(int[] rows, int width, int shift, boolean advances) {
        boolean dot(int column, int row) {
            return column >= 0
                    && column < width
                    && row >= 0
                    && row < HEIGHT
                    && (rows[row] >> width - 1 - column & 1) == 1;
        }
    }

    static Unifont load() throws IOException {
        Unifont unifont = new Unifont(bytes("unifont.hex"));
        for (int at = 0; at < unifont.file.length; at++) {
            unifont.places[unifont.hex(at, CODE - 1)] = at + CODE;
            while (unifont.file[at] != '\n') {
                at++;
            }
        }
        for (String line : new String(bytes("unifont-combining.txt"), StandardCharsets.US_ASCII).split("\n")) {
            unifont.combining.put(
                    Integer.parseInt(line.substring(0, CODE - 1), 16), Integer.parseInt(line.substring(CODE)));
        }
        return unifont;
    }

    private static byte[] bytes(String resource) throws IOException {
        try (InputStream in = Unifont.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the typeface " + resource + " is not in the jar");
            }
            return in.readAllBytes();
        }
    }

    private int hex(int from, int digits) {
        int value = 0;
        for (int i = from; i < from + digits; i++) {
            value = value << 4 | Character.digit(file[i], 16);
        }
        return value;
    }

    boolean has(int codePoint) {
        return codePoint < PLANE
                && places[codePoint] > 0
                && Character.isDefined(codePoint)
                && Character.getType(codePoint) != Character.PRIVATE_USE;
    }

    @Nullable
    Glyph glyph(int codePoint) {
        if (!has(codePoint)) {
            return null;
        }
        int place = places[codePoint];
        int end = place;
        while (file[end] != '\n') {
            end++;
        }
        int digits = (end - place) / HEIGHT;
        int[] rows = new int[HEIGHT];
        for (int row = 0; row < HEIGHT; row++) {
            rows[row] = hex(place + row * digits, digits);
        }
        int width = digits * 4;
        int type = Character.getType(codePoint);
        boolean mark = type == Character.NON_SPACING_MARK
                || type == Character.ENCLOSING_MARK
                || combining.containsKey(codePoint);
        // those of scripts from the right have a shift of 0 there, as their letter comes after
        int shift = combining.getOrDefault(codePoint, 0);
        return new Glyph(rows, width, mark && shift == 0 ? -width : shift, !mark);
    }
}
