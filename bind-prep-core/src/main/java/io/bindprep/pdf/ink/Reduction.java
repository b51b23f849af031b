package io.bindprep.pdf.ink;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;

/**
 * An outline with what lies beside a window made simple, so that an area of it costs less: the time for one grows with the
 * square of its segments.
 *
 * <p>Exact within the window: what stays on the far side of one of its lines winds around no point of it, however it runs
 * there, so that a straight line does as well.
 */
final class Reduction {
    private static final int LEFT = 1;
    private static final int RIGHT = 2;
    private static final int BELOW = 4;
    private static final int ABOVE = 8;

    private final Rectangle2D window;
    private final Path2D out;
    private double x;
    private double y;
    /** Sides on which all of the line lies that is not written yet; 0 where there is none. */
    private int beside;

    private Reduction(Rectangle2D window, int rule) {
        this.window = window;
        out = new Path2D.Double(rule);
    }

    static Shape of(Shape shape, Rectangle2D window) {
        if (shape instanceof Rectangle2D) {
            return shape;
        }
        double[] p = new double[6];
        PathIterator it = shape.getPathIterator(null);
        Reduction reduction = new Reduction(window, it.getWindingRule());
        for (; !it.isDone(); it.next()) {
            reduction.segment(it.currentSegment(p), p);
        }
        reduction.write();
        return reduction.out;
    }

    private void segment(int kind, double[] p) {
        int points = switch (kind) {
            case PathIterator.SEG_QUADTO -> 2;
            case PathIterator.SEG_CUBICTO -> 3;
            case PathIterator.SEG_CLOSE -> 0;
            default -> 1;
        };
        int sides = side(x, y);
        for (int i = 0; i < points; i++) {
            sides &= side(p[2 * i], p[2 * i + 1]);
        }
        boolean drawn = kind != PathIterator.SEG_MOVETO && kind != PathIterator.SEG_CLOSE;
        if (drawn && (beside & sides) != 0) {
            beside &= sides;
        } else {
            write();
            beside = drawn ? sides : 0;
            if (beside == 0) {
                copy(kind, p);
            }
        }
        if (points > 0) {
            x = p[2 * points - 2];
            y = p[2 * points - 1];
        } else if (out.getCurrentPoint() != null) {
            x = out.getCurrentPoint().getX();
            y = out.getCurrentPoint().getY();
        }
    }

    private void write() {
        if (beside != 0) {
            out.lineTo(x, y);
            beside = 0;
        }
    }

    private void copy(int kind, double[] p) {
        switch (kind) {
            case PathIterator.SEG_MOVETO -> out.moveTo(p[0], p[1]);
            case PathIterator.SEG_LINETO -> out.lineTo(p[0], p[1]);
            case PathIterator.SEG_QUADTO -> out.quadTo(p[0], p[1], p[2], p[3]);
            case PathIterator.SEG_CUBICTO -> out.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
            default -> out.closePath();
        }
    }

    private int side(double px, double py) {
        return (px < window.getMinX() ? LEFT : 0)
                | (px > window.getMaxX() ? RIGHT : 0)
                | (py < window.getMinY() ? BELOW : 0)
                | (py > window.getMaxY() ? ABOVE : 0);
    }
}
