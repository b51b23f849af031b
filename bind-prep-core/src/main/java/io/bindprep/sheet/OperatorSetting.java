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
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * One setting that the operator makes.
 *
 * @param value in large print
 * @param note what goes with it
 */
public record OperatorSetting(String label, String value, String note) {
    private static final int MOST_RANGES = 6;

    /** Settings without a name of their own on the dial: a length that the job gives, or the only one. */
    private static final Pattern LENGTH_OR_NONE = Pattern.compile("fixed|[0-9].* (?:mm|cm|in|pt)");

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
        if (!LENGTH_OR_NONE.matcher(dial).matches()) {
            all.add(new OperatorSetting("Depth dial", dial, "gives the distance in the next box"));
        }
        all.add(depth(plan, measures));
        all.add(guide(plan, top, measures));
        all.add(lift(lifts, measures));
        all.add(element(plan));
        Length closer = plan.closer();
        Element element = plan.element();
        if (element != null && closer != null) {
            String size = closer.equals(element.size()) ? element.name() : measures.size(closer);
            all.add(new OperatorSetting(
                    "Closer", size, closer.equals(element.size()) ? "as the element" : "other than the element"));
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

    private static OperatorSetting depth(Plan plan, Measures measures) {
        return new OperatorSetting(
                "Binding edge to hole centre",
                measures.set(plan.edgeDistance()),
                finer(plan.edgeDistance(), measures) + "paper outside the hole "
                        + measures.mark(plan.depth().outside()));
    }

    /** The length as a finer scale shows it, where that is another. */
    private static String finer(Length length, Measures measures) {
        return measures.setExactly(length)
                        || measures.mark(length).replace(".0 ", " ").equals(measures.set(length))
                ? ""
                : "on a finer scale " + measures.mark(length) + "; ";
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
                scale + finer(first, measures) + "first hole's centre from the " + (top ? "left" : "head")
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
