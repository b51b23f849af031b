package io.bindprep.pdf.ink;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;

/** Small questions about outlines. */
public final class Outlines {
    /** Above this, exact intersection of areas is too slow (it grows with the square) and bounds decide. */
    static final int MOST_EXACT_SEGMENTS = 1500;

    /** Beyond a kilometre curves cross in places that no number tells apart, and few of them are slow already. */
    private static final double FAR = 1e7;

    private static final int MOST_FAR_SEGMENTS = 50;

    private Outlines() {}

    /** Returns true if an outline is not cut exactly, as that would take too long. */
    static boolean tooLong(Shape shape, Rectangle2D bounds) {
        boolean far = Math.max(Math.abs(bounds.getMinX()), Math.abs(bounds.getMaxX())) > FAR
                || Math.max(Math.abs(bounds.getMinY()), Math.abs(bounds.getMaxY())) > FAR;
        return segments(shape) > (far ? MOST_FAR_SEGMENTS : MOST_EXACT_SEGMENTS);
    }

    static int segments(Shape shape) {
        if (shape instanceof Rectangle2D) {
            return 4;
        }
        int n = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone() && n <= MOST_EXACT_SEGMENTS; it.next()) {
            n++;
        }
        return n;
    }

    /** Returns true if an outline is one rectangle with sides along the centres. */
    static boolean isUpright(Shape shape) {
        if (shape instanceof Rectangle2D) {
            return true;
        }
        double[] p = new double[6];
        double[] xs = new double[5];
        double[] ys = new double[5];
        int n = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(p);
            if (kind == PathIterator.SEG_CLOSE) {
                continue;
            }
            boolean start = kind == PathIterator.SEG_MOVETO;
            if (start && n >= 4) {
                continue; // a trailing move paints nothing
            }
            if (n == 5 || start != (n == 0) || kind > PathIterator.SEG_LINETO) {
                return false;
            }
            xs[n] = p[0];
            ys[n] = p[1];
            n++;
        }
        if (n == 5 && (xs[4] != xs[0] || ys[4] != ys[0]) || n < 4) {
            return false;
        }
        return same(xs[0], xs[1]) && same(ys[1], ys[2]) && same(xs[2], xs[3]) && same(ys[3], ys[0])
                || same(ys[0], ys[1]) && same(xs[1], xs[2]) && same(ys[2], ys[3]) && same(xs[3], xs[0]);
    }

    private static boolean same(double a, double b) {
        return Math.abs(a - b) < 1e-6 * (1 + Math.abs(a));
    }

    /** The bounds of what an outline encloses: by its curves, not their control points, and without moves that draw nothing. */
    static Rectangle2D bounds(Shape shape) {
        if (shape instanceof Rectangle2D || shape instanceof Area) {
            return shape.getBounds2D();
        }
        Extent extent = new Extent();
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(p);
            int last = 0;
            if (kind == PathIterator.SEG_MOVETO) {
                startX = p[0];
                startY = p[1];
            } else if (kind == PathIterator.SEG_CLOSE) {
                p[0] = startX;
                p[1] = startY;
            } else {
                extent.add(x, y);
                if (kind == PathIterator.SEG_QUADTO) {
                    extent.curve(
                            x,
                            y,
                            (x + 2 * p[0]) / 3,
                            (y + 2 * p[1]) / 3,
                            (2 * p[0] + p[2]) / 3,
                            (2 * p[1] + p[3]) / 3,
                            p[2],
                            p[3]);
                    last = 2;
                } else if (kind == PathIterator.SEG_CUBICTO) {
                    extent.curve(x, y, p[0], p[1], p[2], p[3], p[4], p[5]);
                    last = 4;
                }
                extent.add(p[last], p[last + 1]);
            }
            x = p[last];
            y = p[last + 1];
        }
        return extent.bounds();
    }

    /** The unit square under a transform, as images are painted. */
    public static Shape unitSquare(AffineTransform t) {
        return quad(t, 0, 0, 1, 1);
    }

    /** A rectangle under a transform. */
    static Shape quad(AffineTransform t, double x0, double y0, double x1, double y1) {
        double[] c = {x0, y0, x1, y0, x1, y1, x0, y1};
        t.transform(c, 0, c, 0, 4);
        Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO, 5);
        path.moveTo(c[0], c[1]);
        for (int i = 2; i < 8; i += 2) {
            path.lineTo(c[i], c[i + 1]);
        }
        path.closePath();
        return path;
    }
}
