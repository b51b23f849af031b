package io.bindprep.sheet;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.run.Lift;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * One setting that the operator makes.
 *
 * @param value in large print
 * @param note what goes with it
 */
public record OperatorSetting(String label, String value, String note) {
    private static final int MOST_RANGES = 6;

    /** The settings in the order in which they are made. */
    static List<OperatorSetting> of(Plan plan, List<Lift> lifts, boolean top) {
        List<OperatorSetting> all = new ArrayList<>();
        all.add(die(plan));
        if (plan.row().holes().isEmpty()) {
            all.add(new OperatorSetting("Holes", "none fits", "this edge takes no whole hole row: do not punch"));
            return all;
        }
        all.add(pins(plan));
        String dial = plan.depth().setting().name();
        if (!dial.matches("[0-9].*|fixed")) {
            all.add(new OperatorSetting("Depth dial", dial, "gives the distance in the next box"));
        }
        all.add(depth(plan));
        all.add(guide(plan, top));
        all.add(lift(lifts));
        all.add(element(plan));
        Length closer = plan.closer();
        if (plan.element() != null && closer != null) {
            all.add(new OperatorSetting("Closer", LengthText.mm(closer.mm()), LengthText.inches(closer)));
        }
        return all;
    }

    private static OperatorSetting die(Plan plan) {
        boolean named = !plan.pitchName().equals(plan.pattern());
        return new OperatorSetting("Die", plan.pitchName(), (named ? plan.pattern() + ", " : "") + hole(plan));
    }

    private static String hole(Plan plan) {
        return plan.round()
                ? "round holes " + LengthText.mm(plan.holeAlong().mm())
                : "holes " + LengthText.area(plan.holeAlong(), plan.holeAcross());
    }

    private static OperatorSetting pins(Plan plan) {
        List<Integer> pulled = plan.row().pulledPins();
        return new OperatorSetting(
                "Pull pins",
                pulled.isEmpty() ? "none" : PageLists.compact(pulled, MOST_RANGES),
                plan.row().holes().size() + " holes stay; pins count from the side guide");
    }

    private static OperatorSetting depth(Plan plan) {
        return new OperatorSetting(
                "Binding edge to hole centre",
                LengthText.mm(plan.edgeDistance().mm()),
                LengthText.thirtySeconds(plan.edgeDistance()) + "; paper outside the hole "
                        + LengthText.mm(plan.depth().outside().mm()));
    }

    private static OperatorSetting guide(Plan plan, boolean top) {
        Length first = plan.row().holes().get(0).centre();
        Length off = plan.row().guideOff();
        String scale = off.equals(Length.ZERO)
                ? ""
                : "by its own scale " + first.minus(off).inMm() + ", as measured; ";
        return new OperatorSetting(
                "Side guide",
                LengthText.mm(first.mm()),
                scale + "first hole's centre from the " + (top ? "left" : "head")
                        + (plan.sameEndToGuide() ? "; THE SAME END TO THE GUIDE ON EVERY LIFT" : ""));
    }

    private static OperatorSetting lift(List<Lift> lifts) {
        int most = lifts.stream().mapToInt(Lift::leaves).max().orElse(0);
        Length thickest =
                lifts.stream().map(Lift::thickness).max(Length::compareTo).orElse(Length.ZERO);
        return new OperatorSetting(
                "Lift, at most",
                most + (most == 1 ? " leaf" : " leaves"),
                lifts.size() + (lifts.size() == 1 ? " lift" : " lifts") + " per copy; the thickest "
                        + LengthText.mm(thickest.mm()));
    }

    private static OperatorSetting element(Plan plan) {
        Element element = plan.element();
        if (element == null) {
            return new OperatorSetting("Element", "none fits", "no element takes this stack: do not punch");
        }
        String pieces = plan.pieces().stream().map(String::valueOf).collect(Collectors.joining(" + "));
        return new OperatorSetting(
                "Element",
                element.name(),
                plan.method().name().toLowerCase(Locale.ROOT) + (pieces.isEmpty() ? "" : ", " + pieces + " loops"));
    }
}
