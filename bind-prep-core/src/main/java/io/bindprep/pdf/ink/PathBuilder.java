package io.bindprep.pdf.ink;

import io.bindprep.pdf.syntax.Budget;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.apache.pdfbox.util.Matrix;

/** The current path in user space with its running bounds, so that a far path costs no outline. */
final class PathBuilder {
    private static final int MOST_POINTS = 2_000_000;

    private Path2D.Double path = new Path2D.Double();
    private double x0;
    private double y0;
    private double x1;
    private double y1;
    private double hereX;
    private double hereY;
    private boolean started;
    private int points;

    /** A path put aside while a form is drawn. */
    record Kept(
            Path2D.Double path,
            double x0,
            double y0,
            double x1,
            double y1,
            double hereX,
            double hereY,
            boolean started) {}

    Kept keep() {
        Kept kept = new Kept(path, x0, y0, x1, y1, hereX, hereY, started);
        path = new Path2D.Double();
        clear();
        return kept;
    }

    void restore(Kept k) {
        path = k.path;
        x0 = k.x0;
        y0 = k.y0;
        x1 = k.x1;
        y1 = k.y1;
        hereX = k.hereX;
        hereY = k.hereY;
        started = k.started;
    }

    void clear() {
        if (points > 1000) {
            path = new Path2D.Double(); // gives the memory of a huge path back
        } else {
            path.reset();
        }
        points = 0;
        started = false;
        x0 = Double.POSITIVE_INFINITY;
        y0 = Double.POSITIVE_INFINITY;
        x1 = Double.NEGATIVE_INFINITY;
        y1 = Double.NEGATIVE_INFINITY;
    }

    boolean isEmpty() {
        return !started;
    }

    /** Returns true if it encloses no area at all, so that filling it paints the thinnest line (ISO 32000-1:2008, 8.5.3.1). */
    boolean flat() {
        return x0 == x1 || y0 == y1;
    }

    boolean reaches(StripCollector out, double slack) {
        return out.reaches(x0 - slack, y0 - slack, x1 + slack, y1 + slack);
    }

    /** Returns true if a line along it reaches the strip. */
    boolean reachesThin(StripCollector out, double slack) {
        return out.reachesThin(x0 - slack, y0 - slack, x1 + slack, y1 + slack);
    }

    /** Returns true if it reaches an edge of the trim. */
    boolean reaches(BasicsCollector basics) {
        return basics.reachesTrim(x0, y0, x1, y1);
    }

    Rectangle2D bounds() {
        return new Rectangle2D.Double(x0, y0, x1 - x0, y1 - y0);
    }

    Path2D.Double outline(int rule) {
        Path2D.Double copy = new Path2D.Double(path);
        copy.setWindingRule(rule);
        return copy;
    }

    private double x(Matrix m, double x, double y) {
        double v = m.getScaleX() * x + m.getShearX() * y + m.getTranslateX();
        x0 = Math.min(x0, v);
        x1 = Math.max(x1, v);
        return v;
    }

    private double y(Matrix m, double x, double y) {
        double v = m.getShearY() * x + m.getScaleY() * y + m.getTranslateY();
        y0 = Math.min(y0, v);
        y1 = Math.max(y1, v);
        return v;
    }

    private void count() {
        if (++points > MOST_POINTS) {
            throw new Budget.Spent("one of its outlines has more than " + MOST_POINTS + " points");
        }
    }

    void move(Matrix m, double ax, double ay) {
        count();
        hereX = x(m, ax, ay);
        hereY = y(m, ax, ay);
        path.moveTo(hereX, hereY);
        started = true;
    }

    void line(Matrix m, double ax, double ay) {
        if (!started) {
            return; // readers pass over a line from nowhere
        }
        count();
        hereX = x(m, ax, ay);
        hereY = y(m, ax, ay);
        path.lineTo(hereX, hereY);
    }

    void curve(Matrix m, double ax, double ay, double bx, double by, double cx, double cy) {
        if (!started) {
            move(m, cx, cy);
            return;
        }
        count();
        double px = x(m, ax, ay);
        double py = y(m, ax, ay);
        double qx = x(m, bx, by);
        double qy = y(m, bx, by);
        hereX = x(m, cx, cy);
        hereY = y(m, cx, cy);
        path.curveTo(px, py, qx, qy, hereX, hereY);
    }

    void curveFromHere(Matrix m, double bx, double by, double cx, double cy) {
        if (!started) {
            move(m, cx, cy);
            return;
        }
        count();
        double px = hereX;
        double py = hereY;
        double qx = x(m, bx, by);
        double qy = y(m, bx, by);
        hereX = x(m, cx, cy);
        hereY = y(m, cx, cy);
        path.curveTo(px, py, qx, qy, hereX, hereY);
    }

    void close() {
        if (started) {
            path.closePath();
            java.awt.geom.Point2D here = path.getCurrentPoint();
            hereX = here.getX();
            hereY = here.getY();
        }
    }

    void rectangle(Matrix m, double x, double y, double w, double h) {
        move(m, x, y);
        double startX = hereX;
        double startY = hereY;
        line(m, x + w, y);
        line(m, x + w, y + h);
        line(m, x, y + h);
        path.closePath();
        hereX = startX;
        hereY = startY;
    }
}
