package io.bindprep.pdf.ink;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import org.apache.pdfbox.pdmodel.graphics.PDLineDashPattern;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.jspecify.annotations.Nullable;

/** The lines of a pen that is not round on the page, as the matrix stretches or slants it (ISO 32000-1:2008, 8.4.3.2). */
public final class UnevenPen {
    private UnevenPen() {}

    /** Returns true if a state's pen is round on the page. */
    public static boolean isRound(PDGraphicsState state) {
        return Strokes.isRound(state.getCurrentTransformationMatrix().createAffineTransform());
    }

    /** The outline of a path of user space stroked as a state says; null where the pen is round. */
    public static @Nullable Path2D outline(Path2D path, PDGraphicsState state) {
        AffineTransform t = state.getCurrentTransformationMatrix().createAffineTransform();
        if (Strokes.isRound(t)) {
            return null;
        }
        InkState ink = new InkState(Clip.of(path.getBounds2D()));
        ink.lineWidth = state.getLineWidth();
        ink.cap = state.getLineCap();
        ink.join = state.getLineJoin();
        ink.miter = state.getMiterLimit();
        PDLineDashPattern pattern = state.getLineDashPattern();
        if (pattern != null) {
            float[] lengths = pattern.getDashArray();
            ink.dash = new double[lengths.length];
            for (int i = 0; i < lengths.length; i++) {
                ink.dash[i] = lengths[i];
            }
            ink.dashPhase = pattern.getPhase();
        }
        return new Path2D.Double(Strokes.outline(path, ink, t));
    }
}
