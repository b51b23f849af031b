package io.bindprep.report.words;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.check.Report;
import io.bindprep.check.WhatIf;
import io.bindprep.wording.Counted;
import io.bindprep.wording.PageLists;
import io.bindprep.wording.Terms;
import java.util.ArrayList;
import java.util.List;

/** Effects of every other setting of the punch, one row per setting. */
public final class WhatIfTable {
    private static final int MOST_RANGES = 3;

    /** Titles of the columns. */
    public static final List<String> HEAD = List.of("Setting", "Centre", "Hit", "Tight", "Not checked", "Element");

    private WhatIfTable() {}

    /** The rows, as many cells as {@link #HEAD}; none where the punch has one setting only. */
    public static List<List<String>> rows(Report report) {
        if (report.whatIf().size() < 2) {
            return List.of();
        }
        List<List<String>> rows = new ArrayList<>();
        for (WhatIf w : report.whatIf()) {
            Plan plan = w.plan();
            boolean fits = !plan.row().holes().isEmpty();
            boolean judged = fits && report.documentChecked();
            rows.add(List.of(
                    plan.pitchName() + " " + plan.depth().setting().name() + (w.chosen() ? " (chosen)" : ""),
                    centre(report, plan),
                    judged ? Integer.toString(w.hit().size()) : "-",
                    judged ? Integer.toString(w.tight().size()) : "-",
                    judged ? Integer.toString(w.unchecked().size()) : "-",
                    fits ? element(plan) : "no hole row fits"));
        }
        return rows;
    }

    private static String centre(Report report, Plan plan) {
        return report.measures().mark(plan.edgeDistance());
    }

    private static String element(Plan plan) {
        Element element = plan.element();
        return (element == null ? "none" : element.name()) + (plan.depth().binds() ? ", turns stiffly" : "");
    }

    /** The same as sentences, with the pages. */
    static List<String> lines(Report report) {
        if (report.whatIf().size() < 2) {
            return List.of();
        }
        return report.whatIf().stream().map(w -> line(report, w)).toList();
    }

    private static String line(Report report, WhatIf w) {
        Plan plan = w.plan();
        String setting = plan.pitchName() + " " + plan.depth().setting().name() + ", " + centre(report, plan)
                + (w.chosen() ? " (chosen)" : "") + ": ";
        if (plan.row().holes().isEmpty()) {
            return setting + "no hole row fits this edge.";
        }
        List<String> pages = new ArrayList<>();
        pages(pages, w.hit(), "hit");
        pages(pages, w.tight(), "tight");
        pages(pages, w.unchecked(), Terms.verdict("unchecked"));
        String judged = pages.isEmpty() ? "every page clear" : String.join(", ", pages);
        return setting + (report.documentChecked() ? judged + "; " : "")
                + (plan.element() == null ? "no element takes the stack" : "element " + element(plan)) + ".";
    }

    private static void pages(List<String> said, List<Integer> pages, String what) {
        if (!pages.isEmpty()) {
            said.add(
                    Counted.of(pages.size(), "page") + " " + what + " (" + PageLists.compact(pages, MOST_RANGES) + ")");
        }
    }
}
