package io.bindprep.pdf.ink;

import io.bindprep.pdf.syntax.Budget;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/** Outlines of stroked paths. */
final class Strokes {
    /** A zero-width line prints as the thinnest line of the device: one dot at 600 dpi, in points. */
    private static final double THINNEST_PT = 0.12;

    /** Java strokes a line dash by dash, in about a second so many; more than these is no drawing but an attack. */
    private static final int MOST_DASHES = 1_000_000;

    private Strokes() {}

    /** Reach of ink from the path, in user space. */
    static double reach(InkState s, AffineTransform t) {
        double scale = Math.max(Math.hypot(t.getScaleX(), t.getShearY()), Math.hypot(t.getShearX(), t.getScaleY()));
        double half = Math.max(s.lineWidth * scale, THINNEST_PT) / 2;
        double corner = s.join == 0 ? Math.max(1, s.miter) : 1.5;
        return half * Math.min(corner, 100);
    }

    /** The inked outline of a path given in user space, stroked in the space of the current matrix. */
    static Shape outline(Path2D wholePath, InkState s, AffineTransform t) {
        Path2D userPath = s.cap == BasicStroke.CAP_SQUARE ? withoutDots(wholePath) : wholePath;
        double scale = Math.sqrt(Math.abs(t.getDeterminant()));
        if (isRound(t)) {
            double width = Math.max(s.lineWidth * scale, THINNEST_PT);
            return stroked(stroke(s, width, scale), userPath);
        }
        try {
            Path2D own = new Path2D.Double(userPath, t.createInverse());
            double width = Math.max(s.lineWidth, THINNEST_PT / scale);
            return t.createTransformedShape(stroked(stroke(s, width, 1), own));
        } catch (NoninvertibleTransformException e) {
            return stroked(stroke(s, THINNEST_PT, 1), userPath);
        }
    }

    /** Returns true if a round pen stays round under a matrix, or shrinks to nothing. */
    static boolean isRound(AffineTransform t) {
        double det = Math.abs(t.getDeterminant());
        double scale = Math.sqrt(det);
        return scale < 1e-9
                || Math.abs(t.getScaleX() * t.getShearX() + t.getShearY() * t.getScaleY()) < 1e-6 * det
                        && Math.abs(Math.hypot(t.getScaleX(), t.getShearY()) - scale) < 1e-4 * scale;
    }

    private static Shape stroked(BasicStroke stroke, Path2D path) {
        float[] dash = stroke.getDashArray();
        if (dash != null) {
            double sum = 0;
            for (float d : dash) {
                sum += d;
            }
            if (length(path) / sum * dash.length > MOST_DASHES) {
                throw new Budget.Spent("a line in it has more than " + MOST_DASHES + " dashes");
            }
        }
        return stroke.createStrokedShape(path);
    }

    /** The length of a path along its control points, which no curve exceeds. */
    private static double length(Path2D path) {
        double length = 0;
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        double beginX = 0;
        double beginY = 0;
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(p);
            if (kind == PathIterator.SEG_CLOSE) {
                length += Math.hypot(beginX - x, beginY - y);
                x = beginX;
                y = beginY;
                continue;
            }
            int points = kind == PathIterator.SEG_CUBICTO ? 3 : kind == PathIterator.SEG_QUADTO ? 2 : 1;
            for (int i = 0; i < points; i++) {
                length += kind == PathIterator.SEG_MOVETO ? 0 : Math.hypot(p[2 * i] - x, p[2 * i + 1] - y);
                x = p[2 * i];
                y = p[2 * i + 1];
            }
            if (kind == PathIterator.SEG_MOVETO) {
                beginX = x;
                beginY = y;
            }
        }
        return length;
    }

    /** Without subpaths of one point, which only round caps paint: ISO 32000-1:2008, 8.5.3.2. */
    private static Path2D withoutDots(Path2D path) {
        Path2D.Double kept = new Path2D.Double(path.getWindingRule());
        Path2D.Double sub = new Path2D.Double();
        boolean dot = true;
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator it = path.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(p);
            switch (kind) {
                case PathIterator.SEG_MOVETO -> {
                    if (!dot) {
                        kept.append(sub, false);
                    }
                    sub = new Path2D.Double();
                    dot = true;
                    sub.moveTo(p[0], p[1]);
                    x = p[0];
                    y = p[1];
                }
                case PathIterator.SEG_LINETO -> {
                    dot &= p[0] == x && p[1] == y;
                    sub.lineTo(p[0], p[1]);
                }
                case PathIterator.SEG_CUBICTO -> {
                    dot &= p[0] == x && p[1] == y && p[2] == x && p[3] == y && p[4] == x && p[5] == y;
                    sub.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
                }
                default -> sub.closePath();
            }
        }
        if (!dot) {
            kept.append(sub, false);
        }
        return kept;
    }

    /** The thinnest line along a path. */
    static Shape hairline(Path2D userPath) {
        return new BasicStroke((float) THINNEST_PT).createStrokedShape(userPath);
    }

    private static BasicStroke stroke(InkState s, double width, double scale) {
        int cap = s.cap == 1 ? BasicStroke.CAP_ROUND : s.cap == 2 ? BasicStroke.CAP_SQUARE : BasicStroke.CAP_BUTT;
        int join = s.join == 1 ? BasicStroke.JOIN_ROUND : s.join == 2 ? BasicStroke.JOIN_BEVEL : BasicStroke.JOIN_MITER;
        float[] dash = dash(s, scale);
        float miter = (float) Math.max(1, s.miter);
        return dash == null
                ? new BasicStroke((float) width, cap, join, miter)
                : new BasicStroke((float) width, cap, join, miter, dash, phase(dash, s.dashPhase * scale));
    }

    /** A phase that Java takes: a negative one counts back from the end of the dashes, twice round where they are odd. */
    private static float phase(float[] dash, double phase) {
        if (phase >= 0) {
            return (float) phase;
        }
        double round = 0;
        for (float d : dash) {
            round += 2 * d;
        }
        return (float) (phase - Math.floor(phase / round) * round);
    }

    /** Dashes in the stroke's space; null for a solid line, also where the dashes are too fine to matter. */
    private static float @org.jspecify.annotations.Nullable [] dash(InkState s, double scale) {
        float sum = 0;
        float[] dash = new float[s.dash.length];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = (float) (s.dash[i] * scale);
            if (!(dash[i] >= 0)) {
                return null;
            }
            sum += dash[i];
        }
        return sum < 0.2 * Math.max(1, dash.length) ? null : dash;
    }
}
