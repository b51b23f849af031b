package io.bindprep.sheet;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.check.PageRanges;
import io.bindprep.run.Lift;
import io.bindprep.unit.Length;
import io.bindprep.unit.LengthText;
import java.util.ArrayList;
import java.util.List;

/**
 * One setting that the operator makes.
 *
 * @param value in large print
 * @param note what goes with it
 */
public record Setting(String label, String value, String note) {
    private static final int MOST_RANGES = 6;

    /** The settings in the order in which they are made. */
    static List<Setting> of(Plan plan, List<Lift> lifts, boolean top) {
        List<Setting> all = new ArrayList<>();
        boolean named = !plan.pitchName().equals(plan.pattern());
        all.add(new Setting(
                "Die",
                plan.pitchName(),
                (named ? plan.pattern() + ", " : "") + "hole " + LengthText.area(plan.holeAlong(), plan.holeAcross())));
        if (plan.row().holes().isEmpty()) {
            all.add(new Setting("Holes", "none fits", "this edge takes no whole hole row: do not punch"));
            return all;
        }
        List<Integer> pulled = plan.row().pulledPins();
        all.add(new Setting(
                "Pull pins",
                pulled.isEmpty() ? "none" : PageRanges.compact(pulled, MOST_RANGES),
                plan.row().holes().size() + " holes stay; pins count from the side guide"));
        all.add(new Setting(
                "Depth: edge to axis",
                plan.edgeDistance().inMm(),
                LengthText.inches(plan.edgeDistance()) + "; paper outside the hole "
                        + plan.edgeDistance().minus(plan.holeAcross().half()).inMm()));
        Length first = plan.row().holes().get(0).axis();
        Length off = plan.row().guideOff();
        all.add(new Setting(
                "Side guide",
                first.inMm(),
                (off.equals(Length.ZERO)
                                ? ""
                                : "by its own scale " + first.minus(off).inMm() + ", as measured; ")
                        + "first hole's axis from the " + (top ? "left" : "head")
                        + (plan.sameEndToGuide() ? "; THE SAME END TO THE GUIDE ON EVERY LIFT" : "")));
        int most = lifts.stream().mapToInt(Lift::leaves).max().orElse(0);
        String thickest = lifts.stream()
                .map(Lift::thickness)
                .max(Length::compareTo)
                .orElse(Length.ZERO)
                .inMm();
        all.add(new Setting(
                "Lift, at most",
                most + (most == 1 ? " leaf" : " leaves"),
                lifts.size() + (lifts.size() == 1 ? " lift" : " lifts") + " a copy; the thickest " + thickest));
        Element element = plan.element();
        if (element == null) {
            all.add(new Setting("Element", "none fits", "no element takes this stack: do not punch"));
            return all;
        }
        Length closer = plan.closer();
        all.add(new Setting(
                closer == null ? "Element" : "Element, closer",
                element.name(),
                (closer == null ? "" : "closer at " + LengthText.both(closer))
                        + (plan.pieces().isEmpty()
                                ? ""
                                : (closer == null ? "" : "; ")
                                        + String.join(
                                                " + ",
                                                plan.pieces().stream()
                                                        .map(String::valueOf)
                                                        .toList())
                                        + " loops")));
        return all;
    }
}
