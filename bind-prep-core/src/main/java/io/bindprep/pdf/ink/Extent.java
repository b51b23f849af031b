package io.bindprep.pdf.ink;

import java.awt.geom.Rectangle2D;

/** Grows around points and curves. */
final class Extent {
    private double x0 = Double.POSITIVE_INFINITY;
    private double y0 = Double.POSITIVE_INFINITY;
    private double x1 = Double.NEGATIVE_INFINITY;
    private double y1 = Double.NEGATIVE_INFINITY;

    void add(double x, double y) {
        x0 = Math.min(x0, x);
        x1 = Math.max(x1, x);
        y0 = Math.min(y0, y);
        y1 = Math.max(y1, y);
    }

    /** A cubic curve whose ends have been or will be added. */
    void curve(double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy) {
        boolean within = inside(bx, by) && inside(cx, cy);
        if (!within) {
            turns(ax, bx, cx, dx, ax, ay, bx, by, cx, cy, dx, dy);
            turns(ay, by, cy, dy, ax, ay, bx, by, cx, cy, dx, dy);
        }
    }

    private boolean inside(double x, double y) {
        return x >= x0 && x <= x1 && y >= y0 && y <= y1;
    }

    /** Adds the points where the curve turns back in one coordinate: the zeros of its derivative, a quadratic. */
    private void turns(double a, double b, double c, double d, double... points) {
        double p = d - 3 * c + 3 * b - a;
        double q = 2 * (c - 2 * b + a);
        double r = b - a;
        if (Math.abs(p) < 1e-12) {
            at(-r / q, points);
            return;
        }
        double root = Math.sqrt(q * q - 4 * p * r);
        at((-q + root) / (2 * p), points);
        at((-q - root) / (2 * p), points);
    }

    private void at(double t, double[] p) {
        if (t > 0 && t < 1) { // not a number fails this too
            double u = 1 - t;
            double k0 = u * u * u;
            double k1 = 3 * u * u * t;
            double k2 = 3 * u * t * t;
            double k3 = t * t * t;
            add(k0 * p[0] + k1 * p[2] + k2 * p[4] + k3 * p[6], k0 * p[1] + k1 * p[3] + k2 * p[5] + k3 * p[7]);
        }
    }

    /** An empty rectangle at the origin where nothing was added. */
    Rectangle2D bounds() {
        return x0 > x1 ? new Rectangle2D.Double() : new Rectangle2D.Double(x0, y0, x1 - x0, y1 - y0);
    }
}
