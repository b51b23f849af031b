package io.bindprep.report.words;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.check.Report;
import io.bindprep.check.WhatIf;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Effects of every other setting of the punch, one row per setting. */
public final class WhatIfTable {
    private static final int MOST_RANGES = 3;

    /** Titles of the columns. */
    public static final List<String> HEAD = List.of("Setting", "Centre", "Hit", "Tight", "Not checked", "Element");

    private WhatIfTable() {}

    /** The rows, as many cells as {@link #HEAD}, with numbers of pages; none where the punch has one setting only. */
    public static List<List<String>> rows(Report report) {
        return rows(report, pages -> Integer.toString(pages.size()));
    }

    /** The heading and the rows, with the pages themselves; none where the punch has one setting only. */
    public static List<List<String>> withPages(Report report) {
        List<List<String>> rows = new ArrayList<>(rows(report, WhatIfTable::pages));
        if (rows.isEmpty()) {
            return rows;
        }
        rows.add(0, HEAD);
        boolean allChecked =
                report.whatIf().stream().allMatch(w -> w.unchecked().isEmpty());
        return allChecked ? rows.stream().map(WhatIfTable::withoutUnchecked).toList() : rows;
    }

    private static List<String> withoutUnchecked(List<String> row) {
        List<String> cells = new ArrayList<>(row);
        cells.remove(HEAD.indexOf("Not checked"));
        return cells;
    }

    private static List<List<String>> rows(Report report, Function<List<Integer>, String> pages) {
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
                    report.measures().mark(plan.edgeDistance()),
                    judged ? pages.apply(w.hit()) : "-",
                    judged ? pages.apply(w.tight()) : "-",
                    judged ? pages.apply(w.unchecked()) : "-",
                    fits ? element(plan) : "no hole row fits"));
        }
        return rows;
    }

    /** "2: 14, 27", "0". */
    private static String pages(List<Integer> pages) {
        return pages.size() + (pages.isEmpty() ? "" : ": " + PageLists.compact(pages, MOST_RANGES));
    }

    private static String element(Plan plan) {
        Element element = plan.element();
        return (element == null ? "none" : element.name()) + (plan.depth().binds() ? ", turns stiffly" : "");
    }
}
