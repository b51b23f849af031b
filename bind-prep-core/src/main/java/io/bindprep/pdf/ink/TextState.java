package io.bindprep.pdf.ink;

import java.awt.geom.Point2D;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;

/**
 * State of text (ISO 32000-1:2008, 9.3) and where: the text matrix and that of the line's start, {@code [a b c d e f]}
 * each. In single precision, as PDFBox and most readers compute.
 */
final class TextState {
    @Nullable
    TextFont font;

    float size;
    /** Of the width, 1 is unchanged. */
    float scale = 1;

    float charSpacing;
    float wordSpacing;
    float leading;
    float rise;
    RenderingMode mode = RenderingMode.FILL;
    float a = 1;
    float b;
    float c;
    float d = 1;
    float e;
    float f;
    /** The line's start differs from the text matrix by its offset alone. */
    private float lineE;

    private float lineF;

    TextState copy() {
        TextState s = new TextState();
        s.font = font;
        s.size = size;
        s.scale = scale;
        s.charSpacing = charSpacing;
        s.wordSpacing = wordSpacing;
        s.leading = leading;
        s.rise = rise;
        s.mode = mode;
        s.a = a;
        s.b = b;
        s.c = c;
        s.d = d;
        s.e = e;
        s.f = f;
        s.lineE = lineE;
        s.lineF = lineF;
        return s;
    }

    void begin() {
        set(1, 0, 0, 1, 0, 0);
    }

    void set(float na, float nb, float nc, float nd, float ne, float nf) {
        a = na;
        b = nb;
        c = nc;
        d = nd;
        e = ne;
        f = nf;
        lineE = ne;
        lineF = nf;
    }

    /** Goes to the start of another line. */
    void moveLine(float x, float y) {
        lineE = x * a + y * c + lineE;
        lineF = x * b + y * d + lineF;
        e = finite(lineE);
        f = finite(lineF);
    }

    /** Origin of the next glyph, before the transform of the page. */
    Point2D here() {
        return new Point2D.Float(e, f);
    }

    /** Origin of the first glyph of the next line. */
    Point2D nextLine() {
        return new Point2D.Float(-leading * c + lineE, -leading * d + lineF);
    }

    /** Goes on by a distance in text space. */
    void advance(float x, float y) {
        e = finite(e + (x * a + y * c));
        f = finite(f + (x * b + y * d));
    }

    private static float finite(float v) {
        if (!(Math.abs(v) <= Float.MAX_VALUE)) {
            throw new IllegalArgumentException("a position beyond all measure");
        }
        return v;
    }

    /** From glyph space, 1 being the font size, to user space. */
    Matrix rendering(Matrix ctm) {
        return new Matrix(size * scale, 0, 0, size, 0, rise)
                .multiply(new Matrix(a, b, c, d, e, f))
                .multiply(ctm);
    }
}
