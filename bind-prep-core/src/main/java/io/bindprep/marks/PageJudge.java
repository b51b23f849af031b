package io.bindprep.marks;

import io.bindprep.binding.Gap;
import io.bindprep.binding.Hole;
import io.bindprep.binding.Plan;
import io.bindprep.block.PagePlace;
import io.bindprep.unit.Length;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Holds a page's marks against the holes of the plan.
 *
 * <p>A hole is taken with its tolerance all round. A mark that only touches it is not punched; one exactly at
 * the margin is not tight.
 */
public final class PageJudge {
    /** Numbers in a PDF are single floats: on a page of 1 m they are true to about this, millimetres. */
    private static final double FLOAT_SLACK_MM = 0.005;

    /** A round hole is held against the mark in slices no thicker than this, each taken at its widest. */
    private static final double SLICE_MM = 0.25;

    private static final double LEAST_STRIP_MM = 15;

    private final Plan plan;
    private final double clearMm;
    private final Gap.@Nullable ThumbCut cut;
    private final double cutDepthMm;

    /** A judge for one plan. */
    public PageJudge(Plan plan) {
        this.plan = plan;
        Gap gap = plan.row().gap();
        this.cut = gap == null ? null : gap.thumbCut();
        this.cutDepthMm =
                cut == null ? 0 : cut.depth().plus(plan.punchingTolerance()).mm();
        this.clearMm = Math.max(plan.bindingMargin().mm(), plan.holeZone().mm());
    }

    /** Depth from the binding edge in which marks are needed, millimetres: 15, or more where margin or holes ask for it. */
    public double stripMm() {
        return Math.max(LEAST_STRIP_MM, Math.max(clearMm, cutDepthMm) + 1);
    }

    /** Distance from the binding edge from which a mark is clear, millimetres. */
    public double clearMm() {
        return clearMm;
    }

    /** Distance from the binding edge from which a mark is out of reach of holes, margin and thumb cut, millimetres. */
    public double reachMm() {
        return Math.max(clearMm, cutDepthMm);
    }

    /**
     * The verdict of a page.
     *
     * @param edgeLengthMm length of the page's own binding edge, millimetres
     */
    public PageVerdict judge(PageMarks page, PagePlace place, double edgeLengthMm) {
        Mark nearest = null;
        boolean background = false;
        List<Hit> hits = new ArrayList<>();
        for (Mark mark : page.marks()) {
            if (mark.kind() == MarkKind.BACKGROUND) {
                background = true;
                continue;
            }
            if (nearest == null || mark.nearMm() < nearest.nearMm()) {
                nearest = mark;
            }
            boolean cutAway = !mayBePhotograph(mark) && cutAway(mark, place, edgeLengthMm);
            if (cutAway || mark.nearMm() < clearMm - FLOAT_SLACK_MM) {
                List<Integer> pins = mayBePhotograph(mark) ? List.of() : pinsThrough(mark, place, edgeLengthMm);
                hits.add(new Hit(mark, pins.isEmpty() && !cutAway ? Verdict.TIGHT : Verdict.HIT, pins));
            }
        }
        hits.sort(Comparator.comparing(Hit::verdict)
                .reversed()
                .thenComparing(h -> h.mark().kind())
                .thenComparing(h -> h.mark().nearMm())
                .thenComparing(h -> h.mark().alongStartMm()));
        Verdict verdict = page.unchecked() != null
                ? Verdict.UNCHECKED
                : hits.isEmpty() ? Verdict.CLEAR : hits.get(0).verdict();
        List<Hit> kept = hits.stream()
                .limit(PageVerdict.MOST_HITS)
                .map(h -> new Hit(h.mark().bounded(), h.verdict(), h.pins()))
                .toList();
        return new PageVerdict(
                page.page(),
                verdict,
                nearest == null ? null : nearest.bounded(),
                kept,
                background,
                page.unchecked(),
                page.basics());
    }

    /** A mark in a picture of which nobody can tell if it is a page or a photograph is never more than tight. */
    private static boolean mayBePhotograph(Mark mark) {
        return mark.kind() == MarkKind.IMAGE && mark.stage() == Stage.ESTIMATE;
    }

    private List<Integer> pinsThrough(Mark mark, PagePlace place, double edgeLengthMm) {
        double reg = plan.punchingTolerance().mm();
        double halfAlong = plan.holeAlong().mm() / 2 + reg;
        double halfAcross = plan.holeAcross().mm() / 2 + reg;
        double centre = plan.edgeDistance().mm();
        if (mark.nearMm() >= centre + halfAcross || mark.farMm() <= centre - halfAcross) {
            return List.of();
        }
        List<Integer> pins = new ArrayList<>();
        for (Hole hole : plan.row().holes()) {
            double at = along(hole.centre(), place, edgeLengthMm);
            if (mark.alongEndMm() > at - halfAlong
                    && mark.alongStartMm() < at + halfAlong
                    && overlaps(mark.shape(), centre, at, halfAcross, halfAlong, plan.round())) {
                pins.add(hole.pin());
            }
        }
        return pins.stream().sorted().toList();
    }

    private static double along(Length fromHead, PagePlace place, double edgeLengthMm) {
        return place.mirrored() ? edgeLengthMm - fromHead.mm() : fromHead.mm();
    }

    // half an ellipse about the middle of the binding edge, tolerance all round
    private boolean cutAway(Mark mark, PagePlace place, double edgeLengthMm) {
        if (cut == null || mark.nearMm() >= cutDepthMm) {
            return false;
        }
        double middle = along(plan.row().length().half(), place, edgeLengthMm);
        double halfAlong = cut.width().half().plus(plan.punchingTolerance()).mm();
        return mark.alongEndMm() > middle - halfAlong
                && mark.alongStartMm() < middle + halfAlong
                && overlaps(mark.shape(), 0, middle, cutDepthMm, halfAlong, true);
    }

    private static boolean overlaps(Shape shape, double x, double y, double halfX, double halfY, boolean round) {
        if (!shape.intersects(new Rectangle2D.Double(x - halfX, y - halfY, 2 * halfX, 2 * halfY))) {
            return false;
        }
        if (!round) {
            return true;
        }
        int slices = (int) Math.ceil(2 * halfY / SLICE_MM);
        double step = 2 * halfY / slices;
        for (int i = 0; i < slices; i++) {
            double low = -halfY + i * step;
            double widestAt = low >= 0 ? low : Math.min(0, low + step);
            double half = halfX * Math.sqrt(Math.max(0, 1 - (widestAt / halfY) * (widestAt / halfY)));
            if (half > 0 && shape.intersects(new Rectangle2D.Double(x - half, y + low, 2 * half, step))) {
                return true;
            }
        }
        return false;
    }
}
