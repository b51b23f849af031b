package io.bindprep.pdf.ink;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.util.Vector;
import org.jspecify.annotations.Nullable;

/**
 * A font as text needs it: codes and advances come from the dictionary where that says enough, so that a font's program
 * is parsed only where a glyph of it comes near the strip.
 */
final class TextFont {
    private static final int MOST_ADVANCES = 65536;

    /** Coding of a string. */
    enum Codes {
        /** One byte each. */
        SINGLE,
        /** Two bytes each, the encoding Identity-H. */
        DOUBLE,
        /** By a map that PDFBox reads. */
        MAPPED
    }

    private final COSDictionary dictionary;
    private final Fonts fonts;
    private final Codes codes;
    private final boolean type3;
    private final boolean vertical;
    private final DeclaredWidths declared;
    private float[] advances = new float[256];
    private @Nullable PDFont loaded;
    /** Its map to words; null where PDFBox has it. */
    @Nullable
    WordMap words;

    final Map<Integer, Path2D> outlines = new HashMap<>();
    final Map<Integer, Rectangle2D> boxes = new HashMap<>();

    TextFont(COSDictionary dictionary, Fonts fonts) throws IOException {
        this.dictionary = dictionary;
        this.fonts = fonts;
        declared = DeclaredWidths.of(dictionary);
        Arrays.fill(advances, Float.NaN);
        if (declared.isComplete()) {
            codes = declared.isDouble() ? Codes.DOUBLE : Codes.SINGLE;
            type3 = false;
            vertical = false;
        } else {
            PDFont font = pdf();
            type3 = font instanceof PDType3Font;
            vertical = font.isVertical();
            codes = font instanceof org.apache.pdfbox.pdmodel.font.PDSimpleFont ? Codes.SINGLE : Codes.MAPPED;
        }
    }

    COSDictionary dictionary() {
        return dictionary;
    }

    Codes codes() {
        return codes;
    }

    boolean isType3() {
        return type3;
    }

    boolean isVertical() {
        return vertical;
    }

    /** The font with its program. */
    PDFont pdf() throws IOException {
        if (loaded == null) {
            loaded = fonts.load(this);
        }
        return loaded;
    }

    void unload() {
        loaded = null;
        outlines.clear();
        boxes.clear();
    }

    int code(ByteArrayInputStream in) throws IOException {
        return pdf().readCode(in);
    }

    /** Words of a code; null where nothing tells. */
    @Nullable
    String words(int code) throws IOException {
        PDFont font = pdf();
        String said = words == null ? null : words.words(code);
        return said == null ? font.toUnicode(code) : said;
    }

    /** Advance of a glyph of horizontal text, 1 being the font size. */
    float advance(int code) throws IOException {
        if (code < advances.length && code >= 0) {
            float known = advances[code];
            if (!Float.isNaN(known)) {
                return known;
            }
        }
        float advance = find(code);
        if (code >= 0 && code < MOST_ADVANCES) {
            if (code >= advances.length) {
                int from = advances.length;
                advances = Arrays.copyOf(advances, Math.min(MOST_ADVANCES, Math.max(code + 1, from * 2)));
                Arrays.fill(advances, from, advances.length, Float.NaN);
            }
            advances[code] = advance;
        }
        return advance;
    }

    private float find(int code) throws IOException {
        float width = declared.width(code);
        return Float.isNaN(width) ? pdf().getDisplacement(code).getX() : width / 1000;
    }

    /** Advance of a glyph of vertical text, downwards. */
    Vector displacement(int code) throws IOException {
        return pdf().getDisplacement(code);
    }

    /** Place of a glyph's vertical origin from its horizontal one. */
    Vector position(int code) throws IOException {
        return pdf().getPositionVector(code);
    }
}
