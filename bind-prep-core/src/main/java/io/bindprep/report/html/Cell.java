package io.bindprep.report.html;

import io.bindprep.check.PageReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One page in the strip of all pages.
 *
 * @param verdict "clear", "tight", "hit" or "unchecked"
 * @param linked whether the page has a place further down
 */
public record Cell(int page, String verdict, boolean linked) {
    private static final int ROW = 10;

    /** The letter that tells the verdict without colour. */
    public String letter() {
        return switch (verdict) {
            case "tight" -> "T";
            case "hit" -> "H";
            case "unchecked" -> "?";
            default -> "";
        };
    }

    /** All pages, ten at a time. */
    static List<List<Cell>> tens(List<PageReport> pages, Set<Integer> shown) {
        List<List<Cell>> tens = new ArrayList<>();
        for (int from = 0; from < pages.size(); from += ROW) {
            tens.add(pages.subList(from, Math.min(pages.size(), from + ROW)).stream()
                    .map(p -> new Cell(
                            p.facts().page(),
                            Texts.lower(p.verdict().verdict()),
                            shown.contains(p.facts().page())))
                    .toList());
        }
        return tens;
    }
}
