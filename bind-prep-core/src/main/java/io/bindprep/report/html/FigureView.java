package io.bindprep.report.html;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.check.Report;
import io.bindprep.wording.Counted;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;

/** A number to be seen from afar: what it is of, the number, what belongs to it. */
public record FigureView(String label, String value, String note) {
    private static final int MOST_PINS = 4;

    static List<FigureView> of(Report r) {
        Plan plan = r.plan();
        List<FigureView> figures = new ArrayList<>();
        int copies = r.job().copies();
        figures.add(new FigureView(
                "Sheets per copy",
                Integer.toString(r.block().printedSheets()),
                copies == 1
                        ? Counted.of(r.block().leaves().size(), "leaf") + " bound"
                        : copies + " copies: " + (long) copies * r.block().printedSheets() + " sheets"));
        figures.add(new FigureView(
                "Stack",
                r.measures().thickness(r.stack().nominal()),
                r.measures().thicknesses(r.stack().min(), r.stack().max())));
        Element element = plan.element();
        figures.add(new FigureView(
                "Element",
                element == null ? "none fits" : element.name(),
                Texts.lower(plan.method()) + ", pitch " + plan.pitchName()));
        figures.add(new FigureView(
                "Holes",
                Integer.toString(plan.row().holes().size()),
                plan.row().pulledPins().isEmpty()
                        ? "no pin to pull"
                        : "pull " + (plan.row().pulledPins().size() == 1 ? "pin " : "pins ")
                                + PageLists.compact(plan.row().pulledPins(), MOST_PINS)));
        figures.add(new FigureView(
                "Lifts per copy",
                Integer.toString(plan.lifts().size()),
                plan.lifts().isEmpty()
                        ? "nothing to punch"
                        : "at most "
                                + Counted.of(
                                        plan.lifts().stream()
                                                .mapToInt(Integer::intValue)
                                                .max()
                                                .orElse(0),
                                        "leaf")));
        return figures;
    }
}
