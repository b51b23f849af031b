package io.bindprep.pdf.ink;

import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/**
 * The current clip: always a bounding rectangle, and the exact outlines only where one is not a rectangle.
 *
 * <p>Intersecting areas at every clip operator cost 30 to 75 % of the whole pass (measured), so outlines are kept and
 * intersected only for a mark about to be recorded.
 *
 * @param bounds in user space
 * @param outline the innermost outline that is not a rectangle; null where bounds say it all
 * @param outer the clip that this outline narrowed; null where there is no outline
 * @param inexact whether it may leave out less than it says: outlines too many or too long to be intersected
 */
public record Clip(
        Rectangle2D bounds,
        @Nullable Shape outline,
        @Nullable Clip outer,
        boolean inexact) {
    /** Deeper chains are cut to their bounding rectangle, and are inexact. */
    private static final int MOST_OUTLINES = 12;

    static Clip of(Rectangle2D bounds) {
        return new Clip(bounds, null, null, false);
    }

    Clip narrowedTo(Shape shape) {
        Rectangle2D box = shape.getBounds2D();
        Rectangle2D narrowed = cut(bounds, box);
        if (Outlines.isUpright(shape)) {
            return new Clip(narrowed, outline, outer, inexact);
        }
        if (depth() >= MOST_OUTLINES || Outlines.segments(shape) > Outlines.MOST_EXACT_SEGMENTS) {
            return new Clip(narrowed, outline, outer, true);
        }
        return new Clip(narrowed, shape, this, inexact);
    }

    private int depth() {
        int depth = 0;
        for (Clip c = this; c != null && c.outline != null; c = c.outer) {
            depth++;
        }
        return depth;
    }

    /** Returns true if every outline of this clip holds a rectangle within its bounds: a fraction of what an area costs. */
    boolean leavesWhole(Rectangle2D box) {
        for (Clip c = this; c != null && c.outline != null; c = c.outer) {
            if (!c.outline.contains(box)) {
                return false;
            }
        }
        return true;
    }

    /** Part of an area inside every outline of this clip. */
    void cut(Area area) {
        for (Clip c = this; c != null && c.outline != null && !area.isEmpty(); c = c.outer) {
            area.intersect(new Area(Reduction.of(c.outline, area.getBounds2D())));
        }
    }

    /** The common part of two rectangles; empty (negative extents set to 0) where they do not meet. */
    public static Rectangle2D cut(Rectangle2D a, Rectangle2D b) {
        double x0 = Math.max(a.getMinX(), b.getMinX());
        double y0 = Math.max(a.getMinY(), b.getMinY());
        double x1 = Math.min(a.getMaxX(), b.getMaxX());
        double y1 = Math.min(a.getMaxY(), b.getMaxY());
        return new Rectangle2D.Double(x0, y0, Math.max(0, x1 - x0), Math.max(0, y1 - y0));
    }
}
