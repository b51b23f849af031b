package io.bindprep.report.xjdf;

import io.bindprep.binding.Hole;
import io.bindprep.binding.Plan;
import io.bindprep.check.Report;
import io.bindprep.job.BindingEdge;
import io.bindprep.unit.Length;
import io.bindprep.xml.XmlText;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The hole row as HolePattern (XJDF 2.2). Center is the centre of the first hole in the coordinates of the finished recto,
 * origin at its lower left; Pitch is the step to the next one; HoleCount runs over the punch's pins from the side guide,
 * holes and spaces in turn, so that pulled pins are the spaces.
 */
final class HolePattern {
    /** The patterns that XJDF 2.2 has (Appendix F); any other is written out. */
    static final Set<String> CATALOG = Set.of(
            "R2m-DIN",
            "R2m-ISO",
            "R2m-MIB",
            "R2i-US-a",
            "R2i-US-b",
            "R3i-US",
            "R4m-DIN-A4",
            "R4m-DIN-A5",
            "R4m-swedish",
            "R4i-US",
            "R5i-US-a",
            "R5i-US-b",
            "R5i-US-c",
            "R6m-4h2s",
            "R6m-DIN-A5",
            "R7i-US-a",
            "R7i-US-b",
            "R7i-US-c",
            "R11m-7h4s",
            "P16_9i-rect-0t",
            "P12m-rect-0t",
            "W2_1i-round-0t",
            "W2_1i-square-0t",
            "W3_1i-square-0t",
            "C9.5m-round-0t");

    private final Report report;
    private final Plan plan;
    private final List<Hole> holes;

    HolePattern(Report report, Plan plan) {
        this.report = report;
        this.plan = plan;
        this.holes = plan.row().holes();
    }

    /** One HolePattern; one for each hole where neither the catalogue nor an even pitch says where they are. */
    void write(XmlText xml) {
        if (even()) {
            pattern(xml, holes.get(0), count(), pitch());
        } else if (CATALOG.contains(plan.pattern())) {
            pattern(xml, holes.get(0), count(), "");
        } else {
            holes.forEach(hole -> pattern(xml, hole, "1", ""));
        }
    }

    private void pattern(XmlText xml, Hole hole, String count, String pitch) {
        boolean known = CATALOG.contains(plan.pattern());
        // an uneven pattern of slots has round holes too, of another size, which only its name tells
        boolean mixed = known && !plan.round() && !even();
        xml.empty(
                "HolePattern",
                "Center",
                center(hole),
                "Extent",
                mixed ? "" : extent(),
                "HoleCount",
                count,
                "Pattern",
                known ? plan.pattern() : "",
                "Pitch",
                pitch,
                "ReferenceEdge",
                LooseBinding.edge(report.job().bindingEdge()),
                "Shape",
                mixed ? "" : plan.round() ? "Round" : "Rectangular");
    }

    /** Returns true if every hole lies a whole number of pitches from the one before it, by pin. */
    private boolean even() {
        for (int i = 1; i < holes.size(); i++) {
            long steps = (long) holes.get(i).pin() - holes.get(i - 1).pin();
            Length gap = holes.get(i).centre().minus(holes.get(i - 1).centre());
            if (!gap.equals(plan.pitch().times(steps))) {
                return false;
            }
        }
        return true;
    }

    private String center(Hole hole) {
        Length width = FinishedSize.width(report);
        Length height = FinishedSize.height(report);
        return switch (report.job().bindingEdge()) {
            case LEFT -> Points.pair(plan.edgeDistance(), height.minus(hole.centre()));
            case RIGHT -> Points.pair(width.minus(plan.edgeDistance()), height.minus(hole.centre()));
            case TOP -> Points.pair(hole.centre(), height.minus(plan.edgeDistance()));
        };
    }

    private String extent() {
        return top()
                ? Points.pair(plan.holeAlong(), plan.holeAcross())
                : Points.pair(plan.holeAcross(), plan.holeAlong());
    }

    // from the head downwards, or from the left along the top
    private String pitch() {
        return top()
                ? Points.pair(plan.pitch(), Length.ZERO)
                : Points.pair(Length.ZERO, plan.pitch().times(-1));
    }

    private boolean top() {
        return report.job().bindingEdge() == BindingEdge.TOP;
    }

    /** Runs of holes and spaces over the pins, beginning with holes; a pin that is stuck cuts. */
    private String count() {
        Set<Integer> cutting = holes.stream().map(Hole::pin).collect(Collectors.toCollection(HashSet::new));
        cutting.addAll(plan.row().fixedPins());
        int last = cutting.stream().mapToInt(Integer::intValue).max().orElse(0);
        for (int pin : plan.row().pulledPins()) {
            last = Math.max(last, pin);
        }
        List<String> runs = new ArrayList<>();
        boolean hole = true;
        int run = 0;
        for (int pin = 1; pin <= last; pin++) {
            if (cutting.contains(pin) != hole) {
                runs.add(Integer.toString(run));
                hole = !hole;
                run = 0;
            }
            run++;
        }
        runs.add(Integer.toString(run));
        return String.join(" ", runs);
    }
}
