package io.bindprep.page;

/**
 * A rectangle in PDF user space units, closed, corners sorted (ISO 32000-1:2008, 7.9.5: any two opposite corners).
 */
public record Box(double x0, double y0, double x1, double y1) {
    /** The rectangle between any two opposite corners. */
    public static Box ofCorners(double xa, double ya, double xb, double yb) {
        return new Box(Math.min(xa, xb), Math.min(ya, yb), Math.max(xa, xb), Math.max(ya, yb));
    }

    /** Extent along x in user space units. */
    public double width() {
        return x1 - x0;
    }

    /** Extent along y in user space units. */
    public double height() {
        return y1 - y0;
    }

    /** Returns true if it has an area. */
    public boolean hasArea() {
        return x1 > x0 && y1 > y0;
    }

    /** Part of this box inside another; without area where they do not meet. */
    public Box cutTo(Box limit) {
        double left = Math.max(x0, limit.x0);
        double low = Math.max(y0, limit.y0);
        return new Box(left, low, Math.max(left, Math.min(x1, limit.x1)), Math.max(low, Math.min(y1, limit.y1)));
    }

    /** Returns true if another box lies inside this one, with some slack in user space units. */
    public boolean contains(Box other, double slack) {
        return other.x0 >= x0 - slack && other.y0 >= y0 - slack && other.x1 <= x1 + slack && other.y1 <= y1 + slack;
    }
}
