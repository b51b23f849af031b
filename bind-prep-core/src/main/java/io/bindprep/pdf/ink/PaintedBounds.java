package io.bindprep.pdf.ink;

import io.bindprep.marks.MarkKind;
import io.bindprep.pdf.ink.InkState.Tone;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/** Bounds of what one operator after the other paints on a page, as far as it is asked for. */
final class PaintedBounds extends StripCollector {
    private final @Nullable Rectangle2D inland;
    private @Nullable Rectangle2D painted;
    private @Nullable MarkKind kind;
    private boolean prints;

    PaintedBounds(Rectangle2D page, @Nullable Rectangle2D inland) {
        super(page, new AffineTransform(), false);
        this.inland = inland;
    }

    @Override
    boolean reachesThin(double x0, double y0, double x1, double y1) {
        return inland != null
                && (x0 < inland.getMinX() || x1 > inland.getMaxX() || y0 < inland.getMinY() || y1 > inland.getMaxY())
                && reaches(x0, y0, x1, y1);
    }

    @Override
    boolean wantsBoundsAlone() {
        return true;
    }

    @Override
    void add(Shape outline, Clip clip, Paint paint) {
        if (paint.tone() == Tone.NOTHING) {
            return;
        }
        Rectangle2D seen = Clip.cut(Clip.cut(Outlines.bounds(outline), clip.bounds()), strip());
        if (seen.isEmpty()) {
            return;
        }
        painted = painted == null ? seen : painted.createUnion(seen);
        kind = kind == null || kind == MarkKind.LINE ? paint.kind() : kind;
        prints |= paint.tone() != Tone.WHITE;
    }

    void clear() {
        painted = null;
        kind = null;
        prints = false;
    }

    @Nullable
    Rectangle2D painted() {
        return painted;
    }

    @Nullable
    MarkKind kind() {
        return kind;
    }

    boolean prints() {
        return prints;
    }
}
