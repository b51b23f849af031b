package io.bindprep.sheet;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.run.Lift;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;

/**
 * One setting that the operator makes.
 *
 * @param value in large print
 * @param note what goes with it
 */
public record OperatorSetting(String label, String value, String note) {
    private static final int MOST_RANGES = 6;

    /** The dial's own name, where it is more than the distance. */
    private static String dial(Plan plan) {
        String name = plan.depth().setting().name();
        return name.matches("[0-9].*|fixed") ? "" : name + ", ";
    }

    /** The settings in the order in which they are made. */
    static List<OperatorSetting> of(Plan plan, List<Lift> lifts, boolean top) {
        List<OperatorSetting> all = new ArrayList<>();
        boolean named = !plan.pitchName().equals(plan.pattern());
        all.add(new OperatorSetting(
                "Die",
                plan.pitchName(),
                (named ? plan.pattern() + ", " : "") + "hole " + LengthText.area(plan.holeAlong(), plan.holeAcross())));
        if (plan.row().holes().isEmpty()) {
            all.add(new OperatorSetting("Holes", "none fits", "this edge takes no whole hole row: do not punch"));
            return all;
        }
        List<Integer> pulled = plan.row().pulledPins();
        all.add(new OperatorSetting(
                "Pull pins",
                pulled.isEmpty() ? "none" : PageLists.compact(pulled, MOST_RANGES),
                plan.row().holes().size() + " holes stay; pins count from the side guide"));
        all.add(new OperatorSetting(
                "Depth, binding edge to hole centre",
                dial(plan) + LengthText.mm(plan.edgeDistance().mm()),
                LengthText.thirtySeconds(plan.edgeDistance()) + "; paper outside the hole "
                        + LengthText.mm(plan.depth().outside().mm())));
        Length first = plan.row().holes().get(0).centre();
        Length off = plan.row().guideOff();
        all.add(new OperatorSetting(
                "Side guide",
                LengthText.mm(first.mm()),
                (off.equals(Length.ZERO)
                                ? ""
                                : "by its own scale " + first.minus(off).inMm() + ", as measured; ")
                        + "first hole's centre from the " + (top ? "left" : "head")
                        + (plan.sameEndToGuide() ? "; THE SAME END TO THE GUIDE ON EVERY LIFT" : "")));
        int most = lifts.stream().mapToInt(Lift::leaves).max().orElse(0);
        String thickest = lifts.stream()
                .map(Lift::thickness)
                .max(Length::compareTo)
                .orElse(Length.ZERO)
                .inMm();
        all.add(new OperatorSetting(
                "Lift, at most",
                most + (most == 1 ? " leaf" : " leaves"),
                lifts.size() + (lifts.size() == 1 ? " lift" : " lifts") + " a copy; the thickest " + thickest));
        Element element = plan.element();
        if (element == null) {
            all.add(new OperatorSetting("Element", "none fits", "no element takes this stack: do not punch"));
            return all;
        }
        Length closer = plan.closer();
        all.add(new OperatorSetting(
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
