package io.bindprep.pdf.strip;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** An outline made of the dots of the drawn strip, in millimetres of the binding-edge frame. */
record DotShape(Path2D path, Rectangle2D bounds) {
    private static final double MM = 1.0 / StripRaster.DOTS_PER_MM;

    /**
     * Of the dots that are set in a window that begins at column x0 and row y0 and is w dots wide; at least one is.
     *
     * @param within what is visible of the thing drawn: its ends are truer than the dots drawn of them
     */
    static DotShape of(boolean[] dots, int w, int x0, int y0, Rectangle2D within) {
        Path2D.Double path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        for (int i = 0; i < dots.length; ) {
            int row = i / w;
            int end = (row + 1) * w;
            while (i < end && !dots[i]) {
                i++;
            }
            int from = i;
            while (i < end && dots[i]) {
                i++;
            }
            if (i > from) {
                path.append(
                        fitted(
                                new Rectangle2D.Double((x0 + from % w) * MM, (y0 + row) * MM, (i - from) * MM, MM),
                                within),
                        false);
            }
        }
        return new DotShape(path, path.getBounds2D());
    }

    /** A run of dots ends where the thing ends that lies within a dot of it: a dot that it hardly covers shows nothing. */
    private static Rectangle2D fitted(Rectangle2D run, Rectangle2D within) {
        double left = end(run.getMinX(), within.getMinX());
        double top = end(run.getMinY(), within.getMinY());
        double right = end(run.getMaxX(), within.getMaxX());
        double bottom = end(run.getMaxY(), within.getMaxY());
        // a hairline may be drawn in dots beside it
        return right > left && bottom > top ? new Rectangle2D.Double(left, top, right - left, bottom - top) : run;
    }

    private static double end(double drawn, double real) {
        return Math.abs(drawn - real) < MM ? real : drawn;
    }

    Mark mark(MarkKind kind, String words) {
        return new Mark(
                kind,
                Stage.RASTER,
                path,
                bounds.getMinX(),
                bounds.getMaxX(),
                bounds.getMinY(),
                bounds.getMaxY(),
                words);
    }
}
