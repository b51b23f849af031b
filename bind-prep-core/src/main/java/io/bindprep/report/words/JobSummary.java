package io.bindprep.report.words;

import io.bindprep.binding.Plan;
import io.bindprep.block.Block;
import io.bindprep.catalogue.Element;
import io.bindprep.check.Report;
import io.bindprep.job.JobReader;
import io.bindprep.marks.Verdict;
import io.bindprep.page.PrevailingSize;
import io.bindprep.paper.SheetSize;
import io.bindprep.paper.Stack;
import io.bindprep.unit.Length;
import io.bindprep.wording.Counted;
import io.bindprep.wording.Measures;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;

/** A report in the few lines that a job is run by; {@link JobNumbers} has the rest. */
public final class JobSummary {
    private static final int MOST_PINS = 8;

    private final Report report;
    private final Measures measures;

    private JobSummary(Report report) {
        this.report = report;
        this.measures = report.measures();
    }

    /** File, book, stock, binding and punch, a phrase or two each. */
    public static List<JobNumbers.Entry> of(Report report) {
        JobSummary summary = new JobSummary(report);
        List<JobNumbers.Entry> entries = new ArrayList<>();
        entries.add(
                report.documentChecked()
                        ? new JobNumbers.Entry(
                                "File",
                                List.of(JobNumbers.named(
                                                report, report.document().file()) + ": " + summary.pages()))
                        : new JobNumbers.Entry("Plan", List.of(report.document().file() + ", no PDF was checked")));
        entries.add(new JobNumbers.Entry("Book", List.of(summary.book())));
        entries.add(new JobNumbers.Entry("Binding", List.of(summary.binding())));
        entries.add(new JobNumbers.Entry("Punch", List.of(summary.punch())));
        return entries;
    }

    private String pages() {
        List<String> parts = new ArrayList<>();
        int all = report.pages().size();
        parts.add(Counted.of(all, "page"));
        if (all > 0) {
            PrevailingSize size = PrevailingSize.of(report.document().pages());
            SheetSize known = report.job().catalogue().sizes().nearest(size.width(), size.height());
            parts.add(
                    known.matches(size.width(), size.height())
                            ? known.name()
                            : measures.area(size.width(), size.height()));
        }
        for (Verdict verdict : Verdict.values()) {
            long count = report.pages().stream()
                    .filter(p -> p.verdict().verdict() == verdict)
                    .count();
            if (count > 0) {
                parts.add((count == all ? "all" : Long.toString(count)) + " " + Phrases.word(verdict));
            }
        }
        return String.join(", ", parts);
    }

    private String book() {
        Block block = report.block();
        Stack stack = report.stack();
        String covers = block.covers() == 0 ? "" : " and " + Counted.of(block.covers(), "cover");
        boolean assumed = report.job().stock().source().endsWith(JobReader.ASSUMED_STOCK);
        String nominal = measures.thickness(stack.nominal());
        boolean exact = List.of(stack.min(), stack.max()).stream()
                .allMatch(t -> measures.thickness(t).equals(nominal));
        return Counted.of(block.bodyLeaves(), "leaf") + covers + ", " + nominal + " thick"
                + (exact ? "; " : " (" + measures.thicknesses(stack.min(), stack.max()) + "); ")
                + (assumed ? "stock assumed: " : "")
                + report.job().stock().name() + ".";
    }

    private String binding() {
        Plan plan = report.plan();
        String method = Phrases.word(plan.method()) + " " + plan.pitchName();
        if (!report.volumes().isEmpty()) {
            return method + ", in " + report.volumes().size() + " volumes.";
        }
        Element element = plan.element();
        if (element == null) {
            return method + "; no binding element takes this stack.";
        }
        Length closer = plan.closer();
        return method + ", binding element " + element.name()
                + (plan.loops() == 0 ? "" : ", " + JobNumbers.loops(plan.pieces()))
                + (closer == null ? "" : "; close it to " + JobNumbers.closer(element, closer, measures)) + ".";
    }

    private String punch() {
        Plan plan = report.plan();
        List<Integer> pins = plan.row().pulledPins();
        String holes = plan.row().holes().isEmpty()
                ? "No hole row fits this edge"
                : Counted.of(plan.row().holes().size(), "hole") + " ("
                        + measures.hole(plan.round(), plan.holeAlong(), plan.holeAcross()) + "), depth "
                        + plan.depth().setting().name() + ": centre " + JobNumbers.centre(report)
                        + " from the binding edge";
        int lifts = report.volumes().isEmpty()
                ? plan.lifts().size()
                : report.run().lifts().size();
        return holes
                + (pins.isEmpty()
                        ? ""
                        : ". Pull " + (pins.size() == 1 ? "pin " : "pins ") + PageLists.compact(pins, MOST_PINS))
                + (lifts == 0 ? "" : "; " + Counted.of(lifts, "lift") + " per copy")
                + (plan.sameEndToGuide() ? "; same end to the side guide on every lift" : "") + ".";
    }
}
