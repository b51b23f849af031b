package io.bindprep.check;

import io.bindprep.marks.PageBasics;
import io.bindprep.marks.PageVerdict;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** {@code bleed-short}: art that reaches the trim but not far enough beyond it, so that paper may show after the cut. */
final class BleedRule implements Rule {
    /** Boxes are often rounded to whole points; a cut is no truer. */
    private static final double SLACK_MM = 0.18;

    @Override
    public List<Finding> find(Situation s) {
        Length wanted = s.job().printLimits().bleed();
        List<Integer> pages = new ArrayList<>();
        PageBasics.Bleed least = null;
        int where = 0;
        for (PageVerdict v : s.verdicts()) {
            PageBasics.Bleed b = v.basics().bleed();
            if (b == null || b.mm() >= wanted.mm() - SLACK_MM) {
                continue;
            }
            pages.add(v.page());
            if (least == null || b.mm() < least.mm()) {
                least = b;
                where = v.page();
            }
        }
        if (least == null) {
            return List.of();
        }
        String edge = least.edge().name().toLowerCase(Locale.ROOT);
        return List.of(Finding.measured(
                "bleed-short",
                Severity.WARNING,
                pages,
                (pages.size() == 1 ? "Page " : Say.pages(pages.size()) + " with too little bleed. Worst on page ")
                        + where + ": bleed at the " + edge + " "
                        + s.measures().mark(least.mm()) + "; " + s.measures().mark(wanted) + " required.",
                "Ask for an export with bleed. If the leaves are not trimmed after printing, switch this check off"
                        + " (bleed: none).",
                least.mm(),
                wanted.mm()));
    }
}
