package io.bindprep.pdf.ink;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.util.Matrix;

/** Fonts whose glyphs are content streams. */
final class Type3 {
    private Type3() {}

    /** Returns true if a glyph may reach the strip, by the font's box taken three times as large: it is often wrong. */
    static boolean mayReach(Matrix textRendering, PDType3Font font, StripCollector out) {
        PDRectangle box = font.getFontBBox();
        if (box == null || !(box.getWidth() > 0) || !(box.getHeight() > 0)) {
            return true;
        }
        AffineTransform t = textRendering.createAffineTransform();
        t.concatenate(font.getFontMatrix().createAffineTransform());
        double w = box.getWidth();
        double h = box.getHeight();
        Shape wide = Outlines.quad(
                t,
                box.getLowerLeftX() - w,
                box.getLowerLeftY() - h,
                box.getUpperRightX() + w,
                box.getUpperRightY() + h);
        return out.reaches(wide.getBounds2D());
    }
}
