package io.bindprep.pdf.ink;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.pdf.ink.InkState.Tone;
import io.bindprep.pdf.syntax.Budget;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** The marks found in a strip so far, in the order of painting, and what later paints do to earlier ones. */
final class FoundMarks {
    private static final int MOST_MARKS = 20_000;
    /** Neighbours that only share an edge do not cover each other. */
    private static final double TOUCHING_MM = 0.02;
    /** Longer outlines are not subtracted but drawn: areas cost the square of their pieces. */
    private static final int MOST_PIECES = 40;
    /** So many subtractions of a page cost about as much as drawing its strip. */
    private static final int MOST_SUBTRACTED = 300;

    private final List<FoundMark> found = new ArrayList<>();
    private final List<FoundMark> backgrounds = new ArrayList<>();
    private int subtracted;

    List<FoundMark> all() {
        return found;
    }

    void add(FoundMark mark) {
        if (found.size() >= MOST_MARKS) {
            throw new Budget.Spent("more than " + MOST_MARKS + " marks lie near its binding edge");
        }
        found.add(mark);
        if (mark.mark.kind() == MarkKind.BACKGROUND) {
            backgrounds.add(mark);
        }
    }

    /** An opaque outline takes what it covers off the marks below; what may be covered otherwise is in doubt. */
    void cover(Shape cover, Rectangle2D box, boolean opaque) {
        boolean upright = Outlines.isUpright(cover);
        boolean[] gone = new boolean[found.size()];
        boolean any = false;
        for (int i = 0; i < gone.length; i++) {
            FoundMark f = found.get(i);
            // a hole in a background leaves it a background, unless it is at the binding edge
            boolean spared = f.mark.kind() == MarkKind.BACKGROUND && box.getMinX() > StripCollector.BLEED_SLACK_MM;
            if (spared || !overlaps(f, box) || !upright && !cover.intersects(f.box())) {
                continue;
            }
            if (opaque && upright && contains(box, f.mark)) {
                gone[i] = true;
            } else if (opaque && subtracted < MOST_SUBTRACTED && small(cover) && small(f.mark.shape())) {
                subtracted++;
                FoundMark rest = f.without(cover);
                gone[i] = rest == null;
                if (rest != null) {
                    found.set(i, rest);
                }
            } else {
                f.doubtful = true;
            }
            any |= gone[i];
        }
        if (any) {
            int next = 0;
            for (int i = 0; i < gone.length; i++) {
                if (!gone[i]) {
                    found.set(next++, found.get(i));
                }
            }
            found.subList(next, found.size()).clear();
        }
    }

    /** Returns true if white in a box may lie over ink. */
    boolean mayLieUnder(Rectangle2D box) {
        for (FoundMark f : found) {
            if (f.paint.tone() != Tone.WHITE && overlaps(f, box)) {
                return true;
            }
        }
        return false;
    }

    /** Returns true if a paint may not show, as a background of its own colour lies below. */
    boolean mayBlendIn(StripCollector.Paint paint, Rectangle2D box) {
        for (FoundMark f : backgrounds) {
            if (paint.colour() != 0 && f.paint.colour() == paint.colour() && overlaps(f, box)) {
                return true;
            }
        }
        return false;
    }

    private static boolean small(Shape shape) {
        return Outlines.segments(shape) <= MOST_PIECES;
    }

    private static boolean contains(Rectangle2D box, Mark m) {
        return box.getMinX() <= m.nearMm()
                && box.getMaxX() >= m.farMm()
                && box.getMinY() <= m.alongStartMm()
                && box.getMaxY() >= m.alongEndMm();
    }

    /** Returns true if a box covers something of a mark, which may itself be as thin as a hairline. */
    private static boolean overlaps(FoundMark f, Rectangle2D box) {
        Mark m = f.mark;
        double across = Math.min(m.farMm(), box.getMaxX()) - Math.max(m.nearMm(), box.getMinX());
        double along = Math.min(m.alongEndMm(), box.getMaxY()) - Math.max(m.alongStartMm(), box.getMinY());
        return across > Math.min(TOUCHING_MM, (m.farMm() - m.nearMm()) / 2)
                && along > Math.min(TOUCHING_MM, (m.alongEndMm() - m.alongStartMm()) / 2);
    }
}
