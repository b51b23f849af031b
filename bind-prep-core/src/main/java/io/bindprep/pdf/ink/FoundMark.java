package io.bindprep.pdf.ink;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jspecify.annotations.Nullable;

/** A mark with what a second look at the drawn strip needs to know of it. */
public final class FoundMark {
    /** Gap that float numbers leave between two outlines that are meant to be the same. */
    private static final double SLIVER_MM = 0.01;

    public final Mark mark;
    public final StripCollector.Paint paint;
    public final StripCollector.Source source;
    public boolean doubtful;

    FoundMark(Mark mark, StripCollector.Paint paint, StripCollector.Source source, boolean doubtful) {
        this.mark = mark;
        this.paint = paint;
        this.source = source;
        this.doubtful = doubtful;
    }

    /** Part of it that a cover leaves, which may be itself; null where that is nothing. */
    @Nullable
    FoundMark without(Shape cover) {
        Area rest = new Area(mark.shape());
        rest.subtract(new Area(cover));
        Rectangle2D b = rest.getBounds2D().createIntersection(box());
        if (rest.isEmpty() || b.getWidth() < SLIVER_MM || b.getHeight() < SLIVER_MM) {
            return null;
        }
        Mark left = new Mark(
                isPicture() ? mark.kind() : StripCollector.kindOf(paint, b),
                mark.stage(),
                new Path2D.Double(rest),
                b.getMinX(),
                b.getMaxX(),
                b.getMinY(),
                b.getMaxY(),
                mark.words());
        return new FoundMark(left, paint, source, doubtful);
    }

    public boolean isPicture() {
        return paint.kind() == MarkKind.IMAGE;
    }

    public Rectangle2D box() {
        return new Rectangle2D.Double(
                mark.nearMm(),
                mark.alongStartMm(),
                mark.farMm() - mark.nearMm(),
                mark.alongEndMm() - mark.alongStartMm());
    }
}
