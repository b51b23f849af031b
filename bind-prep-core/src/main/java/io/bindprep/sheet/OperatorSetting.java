package io.bindprep.sheet;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.check.Report;
import io.bindprep.run.Lift;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
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
    private static final String FINER = "on a finer scale ";

    /** The settings in the order in which they are made. */
    static List<OperatorSetting> of(Plan plan, List<Lift> lifts, boolean top, Report report) {
        Measures measures = report.measures();
        List<OperatorSetting> all = new ArrayList<>();
        all.add(die(plan, measures));
        if (plan.row().holes().isEmpty()) {
            all.add(new OperatorSetting("Holes", "none fits", "this edge takes no whole hole row: do not punch"));
            return all;
        }
        all.add(pins(plan));
        String dial = plan.depth().setting().name();
        if (!dial.matches("[0-9].*|fixed")) {
            all.add(new OperatorSetting("Depth dial", dial, "gives the distance in the next box"));
        }
        all.add(depth(plan, report));
        all.add(guide(plan, top, measures));
        all.add(lift(lifts, measures));
        all.add(element(plan));
        Length closer = plan.closer();
        Element element = plan.element();
        if (element != null && closer != null) {
            boolean named = closer.equals(element.size());
            all.add(new OperatorSetting(
                    "Closer", named ? element.name() : measures.size(closer), measures.sold(closer)));
        }
        return all;
    }

    private static OperatorSetting die(Plan plan, Measures measures) {
        boolean named = !plan.pitchName().equals(plan.pattern());
        return new OperatorSetting(
                "Die",
                plan.pitchName(),
                (named ? plan.pattern() + ", " : "") + "hole "
                        + measures.hole(plan.round(), plan.holeAlong(), plan.holeAcross()));
    }

    private static OperatorSetting pins(Plan plan) {
        List<Integer> pulled = plan.row().pulledPins();
        return new OperatorSetting(
                "Pull pins",
                pulled.isEmpty() ? "none" : PageLists.compact(pulled, MOST_RANGES),
                plan.row().holes().size() + " holes stay; pins count from the side guide");
    }

    private static OperatorSetting depth(Plan plan, Report report) {
        Measures measures = report.measures();
        List<Length> others =
                report.whatIf().stream().map(w -> w.plan().edgeDistance()).toList();
        return new OperatorSetting(
                "Binding edge to hole centre",
                measures.set(plan.edgeDistance(), others),
                FINER + measures.mark(plan.edgeDistance(), others) + "; paper outside the hole "
                        + measures.mark(plan.depth().outside()));
    }

    private static OperatorSetting guide(Plan plan, boolean top, Measures measures) {
        Length first = plan.row().holes().get(0).centre();
        Length off = plan.row().guideOff();
        String scale = off.equals(Length.ZERO)
                ? ""
                : "by its own scale " + measures.mark(first.minus(off)) + ", as measured; ";
        return new OperatorSetting(
                "Side guide",
                measures.set(first),
                scale + "first hole's centre from the " + (top ? "left" : "head") + "; " + FINER
                        + measures.mark(first)
                        + (plan.sameEndToGuide() ? "; THE SAME END TO THE GUIDE ON EVERY LIFT" : ""));
    }

    private static OperatorSetting lift(List<Lift> lifts, Measures measures) {
        int most = lifts.stream().mapToInt(Lift::leaves).max().orElse(0);
        Length thickest =
                lifts.stream().map(Lift::thickness).max(Length::compareTo).orElse(Length.ZERO);
        return new OperatorSetting(
                "Lift, at most",
                most + (most == 1 ? " leaf" : " leaves"),
                lifts.size() + (lifts.size() == 1 ? " lift" : " lifts") + " per copy; the thickest "
                        + measures.thickness(thickest));
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
