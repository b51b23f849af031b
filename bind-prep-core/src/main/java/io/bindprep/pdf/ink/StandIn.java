package io.bindprep.pdf.ink;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.Set;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.apache.pdfbox.pdmodel.font.PDSimpleFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.jspecify.annotations.Nullable;

/**
 * Glyphs of a font that is not in the file, or not readable there, which the font that stands in for it cannot draw: each
 * takes the box of its stated width and the font's ascent and descent. Only a glyph that is known to be empty is blank.
 */
public final class StandIn {
    /** Heights where the font's descriptor states none that makes sense, 1 being the font size; common practice, no source. */
    private static final double ASCENT = 0.95;

    private static final double DESCENT = -0.25;
    private static final double MOST_ASCENT = 1.5;
    private static final double MOST_DESCENT = -1;
    private static final double LEAST_ASCENT = 0.3;
    private static final int SOFT_HYPHEN = 0xad;
    private static final int NO_BREAK_SPACE = 0xa0;

    private static final Set<String> SPACES = Set.of("space", "nbspace", "nonbreakingspace", "uni0020", "uni00A0");

    private StandIn() {}

    /** The box of a glyph in text space; null where the font or its stand-in draws it, or where it is blank. */
    public static @Nullable Path2D missing(PDFont font, int code) {
        try {
            if (font.isEmbedded() || !(font instanceof PDVectorFont vector)) {
                return null;
            }
            Path2D path = lacking(font, code, vector.getNormalizedPath(code));
            return path == null || Fonts.blank(path) ? null : path;
        } catch (IOException | RuntimeException e) {
            return null;
        }
    }

    /** A box or an empty outline for a glyph that the stand-in lacks; null where it has it. */
    static @Nullable Path2D lacking(PDFont font, int code, Path2D drawn) throws IOException {
        boolean empty = Fonts.blank(drawn);
        if (font instanceof PDSimpleFont simple
                && simple.getEncoding() != null
                && SPACES.contains(simple.getEncoding().getName(code))) {
            return new Path2D.Double();
        }
        boolean composite = font instanceof PDType0Font;
        if (!empty && !composite) {
            return null;
        }
        String says = font.toUnicode(code);
        boolean told = says != null && !says.isEmpty();
        if (told && says != null && isSpace(says)) {
            return new Path2D.Double();
        }
        // PDFBox takes the number of a character of another font for one of the stand-in's
        if (!empty && told && ((PDType0Font) font).codeToGID(code) != 0) {
            return null;
        }
        return !told && isUnused(font, code) ? new Path2D.Double() : box(font, code);
    }

    private static boolean isSpace(String says) {
        return says.codePoints()
                .allMatch(c -> Character.isWhitespace(c)
                        || Character.isSpaceChar(c)
                        || c != SOFT_HYPHEN && Character.getType(c) == Character.FORMAT);
    }

    /** Returns true if nothing tells a code of a simple font: neither its encoding nor a width. */
    private static boolean isUnused(PDFont font, int code) throws IOException {
        if (!(font instanceof PDSimpleFont)) {
            return false;
        }
        boolean space = code == ' ' || code == NO_BREAK_SPACE || code == '\t' || code == '\n' || code == '\r';
        return space || !font.hasExplicitWidth(code) && code < ' ';
    }

    /** The box of a glyph by its stated width; empty where it has none, for what combines with another lies over it. */
    static Path2D box(PDFont font, int code) {
        double width;
        try {
            width = font.getWidth(code) / 1000;
        } catch (IOException | RuntimeException e) {
            width = 1;
        }
        if (!(width > 0)) {
            return new Path2D.Double();
        }
        double ascent = ASCENT;
        double descent = DESCENT;
        PDFontDescriptor descriptor = font.getFontDescriptor();
        if (descriptor != null) {
            double a = descriptor.getAscent() / 1000.0;
            double d = descriptor.getDescent() / 1000.0;
            ascent = a >= LEAST_ASCENT && a <= MOST_ASCENT ? a : ascent;
            descent = d < 0 && d >= MOST_DESCENT ? d : descent;
        }
        return rectangle(0, descent, width, ascent);
    }

    static Path2D rectangle(double x0, double y0, double x1, double y1) {
        return new Path2D.Double(new Rectangle2D.Double(x0, y0, x1 - x0, y1 - y0));
    }
}
