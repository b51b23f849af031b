package io.bindprep.pdf.strip;

import java.awt.Shape;
import java.awt.geom.Path2D;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.jspecify.annotations.Nullable;

/**
 * Area that a radial shading paints (ISO 32000-1:2008, 8.7.4.5.4): that of all its circles, none of which has a radius below
 * zero. PDFBox goes on painting beyond the circle of radius zero.
 */
final class RadialCone {
    private static final int RADIAL = 3;
    private static final int DIRECTIONS = 360;
    /** Units beyond which no page reaches. */
    private static final double FAR = 1e6;

    private final double x;
    private final double y;
    private final double r;
    private final double dx;
    private final double dy;
    private final double dr;

    private RadialCone(float[] c) {
        x = c[0];
        y = c[1];
        r = Math.abs(c[2]);
        dx = c[3] - x;
        dy = c[4] - y;
        dr = Math.abs(c[5]) - r;
    }

    /** The area in the shading's space; null where there is no bound to it, or the shading is no radial one. */
    static @Nullable Shape of(COSDictionary shading) {
        COSArray coords = shading.getCOSArray(COSName.COORDS);
        if (shading.getInt(COSName.SHADING_TYPE) != RADIAL || coords == null || coords.size() < 6) {
            return null;
        }
        COSArray extend = shading.getCOSArray(COSName.EXTEND);
        return new RadialCone(coords.toFloatArray()).area(is(extend, 0), is(extend, 1));
    }

    private static boolean is(@Nullable COSArray extend, int i) {
        COSBase value = extend == null || extend.size() <= i ? null : extend.getObject(i);
        return value instanceof COSBoolean b && b.getValue();
    }

    private @Nullable Shape area(boolean before, boolean behind) {
        boolean grows = Math.hypot(dx, dy) <= Math.abs(dr);
        if (grows && (dr > 0 ? behind : before)) {
            return null; // circles that hold each other cover the plane
        }
        double far = FAR / Math.max(1e-3, Math.hypot(dx, dy));
        double start = !before ? 0 : dr > 0 ? -r / dr : -far;
        double end = !behind ? 1 : dr < 0 ? -r / dr : far;
        return hull(start, end);
    }

    /** The convex hull of two circles: in each direction the one that reaches farther. */
    private Shape hull(double one, double other) {
        Path2D.Double hull = new Path2D.Double();
        for (int i = 0; i < DIRECTIONS; i++) {
            double cos = Math.cos(2 * Math.PI * i / DIRECTIONS);
            double sin = Math.sin(2 * Math.PI * i / DIRECTIONS);
            double s = reach(one, cos, sin) >= reach(other, cos, sin) ? one : other;
            double px = x + s * dx + (r + s * dr) * cos;
            double py = y + s * dy + (r + s * dr) * sin;
            if (i == 0) {
                hull.moveTo(px, py);
            } else {
                hull.lineTo(px, py);
            }
        }
        hull.closePath();
        return hull;
    }

    private double reach(double s, double cos, double sin) {
        return (x + s * dx) * cos + (y + s * dy) * sin + r + s * dr;
    }
}
