package io.bindprep.check;

import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.job.Trim;
import io.bindprep.page.PageFacts;
import io.bindprep.paper.SheetSizes;
import io.bindprep.wording.LengthText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code page-size}: not the size the job names; {@code page-size-mixed}: not the size most pages have, where the job
 * names none; {@code page-rotated}: that size, but rotated 90 degrees.
 */
final class SizeRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<PageFacts> pages = s.document().pages();
        if (pages.isEmpty()) {
            return List.of();
        }
        Trim trim = s.job().trim();
        SheetSizes sizes = s.job().catalogue().sizes();
        ExpectedSize expected = trim == null ? ExpectedSize.prevailing(sizes, pages) : ExpectedSize.of(sizes, trim);
        List<PageFacts> other = new ArrayList<>();
        List<PageFacts> rotated = new ArrayList<>();
        List<PageFacts> wide = new ArrayList<>();
        for (PageFacts p : pages) {
            if (asDeclared(s.job(), expected, p)) {
                continue;
            }
            boolean foldable = s.job().special().foldOut(p.page()).isEmpty() && FoldOutRule.foldable(s, expected, p);
            boolean onItsSide = expected.fits(p.trimHeight(), p.trimWidth());
            (onItsSide ? rotated : foldable ? wide : other).add(p);
        }
        List<Finding> findings = new ArrayList<>();
        if (!other.isEmpty()) {
            findings.add(otherSize(sizes, other, expected, trim != null));
        }
        if (!wide.isEmpty()) {
            findings.add(FoldOutRule.undeclared(s, expected, wide, trim != null));
        }
        if (!rotated.isEmpty()) {
            findings.add(rotated(rotated, expected, trim != null));
        }
        return findings;
    }

    /** Returns true if a page has the size that it should, what the job says of it in particular included. */
    private static boolean asDeclared(Job job, ExpectedSize expected, PageFacts p) {
        SpecialLeaves special = job.special();
        boolean top = job.bindingEdge() == BindingEdge.TOP;
        Trim own = special.size(p.page()).orElse(null);
        if (own != null) {
            return ExpectedSize.of(job.catalogue().sizes(), own).fits(p.trimWidth(), p.trimHeight());
        }
        if (special.rotated(p.page()).isPresent()) {
            return expected.fits(p.trimHeight(), p.trimWidth());
        }
        if (special.foldOut(p.page()).isPresent()) {
            return expected.fitsAlong(p, top);
        }
        SpecialLeaves.Tab tab = special.tab(p.page()).orElse(null);
        return expected.fits(p.trimWidth(), p.trimHeight())
                || (tab != null && expected.fitsWith(p, tab.extension(), top));
    }

    private static Finding otherSize(SheetSizes sizes, List<PageFacts> pages, ExpectedSize expected, boolean named) {
        PageFacts worst = pages.get(0);
        for (PageFacts p : pages) {
            if (expected.deviationMm(p) > expected.deviationMm(worst)) {
                worst = p;
            }
        }
        double off = expected.deviationMm(worst);
        double tolerance = expected.toleranceMm(worst);
        int count = pages.size();
        String message = (count == 1 ? "1 page has" : count + " pages have") + " another size than "
                + (named ? "the job's " : "most pages, ") + expected.text() + ": "
                + (count == 1 ? "page " : "the most, page ") + worst.page() + ", is "
                + ExpectedSize.text(sizes, worst) + ", off by " + hundredths(off)
                + " where " + hundredths(tolerance) + " are allowed.";
        return new Finding(
                named ? "page-size" : "page-size-mixed",
                named ? Severity.ERROR : Severity.WARNING,
                numbers(pages),
                message,
                named
                        ? "Ask for these pages at the job's size, set trim to the size that is wanted, or name them under other-sizes."
                        : "Ask whether these pages are meant so and name them under other-sizes if they are; set trim to the size that"
                                + " all should have.",
                off,
                tolerance,
                null);
    }

    private static Finding rotated(List<PageFacts> pages, ExpectedSize expected, boolean named) {
        int count = pages.size();
        return Say.onPages(
                "page-rotated",
                named ? Severity.ERROR : Severity.WARNING,
                numbers(pages),
                (count == 1 ? "1 page has" : count + " pages have") + " the size " + expected.text()
                        + " but rotated 90 degrees, so the binding edge checked is not the one that is punched.",
                "Turn these pages in the PDF so that all stand alike, or name them as rotated where they are to lie so in the"
                        + " book, and check again.");
    }

    private static String hundredths(double mm) {
        return LengthText.plain(BigDecimal.valueOf(mm), 2) + " mm";
    }

    private static List<Integer> numbers(List<PageFacts> pages) {
        return pages.stream().map(PageFacts::page).toList();
    }
}
