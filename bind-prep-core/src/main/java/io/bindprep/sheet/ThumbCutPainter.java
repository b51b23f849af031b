package io.bindprep.sheet;

import io.bindprep.binding.Gap;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Draws the thumb cut, a half ellipse out of the middle of the binding edge; nothing where the row has none. */
final class ThumbCutPainter {
    /** Chords that the cut is drawn with; none is off its curve by as much as a hairline. */
    private static final int LINES = 48;

    private final EdgeDrawing drawing;
    private final double middle;
    private final Gap.@Nullable ThumbCut cut;

    ThumbCutPainter(EdgeDrawing drawing) {
        this.drawing = drawing;
        this.middle = drawing.plan().row().length().mm() / 2;
        Gap gap = drawing.plan().row().gap();
        this.cut = gap == null ? null : gap.thumbCut();
    }

    boolean isThere() {
        return cut != null;
    }

    /** Half of its width along the edge, 0 where there is none. */
    double half() {
        return cut == null ? 0 : cut.width().mm() / 2;
    }

    double depth() {
        return cut == null ? 0 : cut.depth().mm();
    }

    /** Depth at a place along the edge. */
    double depthAt(double place) {
        double off = cut == null ? 1 : Math.abs(place - middle) / half();
        return off >= 1 ? 0 : depth() * Math.sqrt(1 - off * off);
    }

    /** Draws as much of it as lies between two places along the edge. */
    void paint(Pen pen, double left, double edge, double from, double to) throws IOException {
        if (cut == null) {
            return;
        }
        double start = Math.max(from, middle - half());
        double end = Math.min(to, middle + half());
        if (end <= start) {
            return;
        }
        pen.width(0.25);
        double first = Math.acos((middle - start) / half());
        double last = Math.acos((middle - end) / half());
        for (int i = 0; i < LINES; i++) {
            double[] a = onCut(first + (last - first) * i / LINES);
            double[] b = onCut(first + (last - first) * (i + 1) / LINES);
            pen.line(left - from + a[0], edge + a[1], left - from + b[0], edge + b[1]);
        }
        // said once, in the piece where the middle is
        if (from <= middle && middle <= to && start < middle) {
            pen.centred(
                    false,
                    EdgePainter.SMALL,
                    left - from + (start + end) / 2,
                    edge + depth() + 3,
                    "thumb cut " + drawing.measures().area(cut.width(), cut.depth()));
        }
    }

    private double[] onCut(double angle) {
        return new double[] {middle - half() * Math.cos(angle), depth() * Math.sin(angle)};
    }
}
