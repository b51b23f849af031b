package io.bindprep.check;

import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.job.Trim;
import io.bindprep.page.PageFacts;
import io.bindprep.paper.SheetSizes;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
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
            findings.add(otherSize(s.measures(), sizes, other, expected, trim != null));
        }
        if (!wide.isEmpty()) {
            findings.add(FoldOutRule.undeclared(s, expected, wide, trim != null));
        }
        if (!rotated.isEmpty()) {
            findings.add(rotated(s.measures(), rotated, expected, trim != null));
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

    private static Finding otherSize(
            Measures measures, SheetSizes sizes, List<PageFacts> pages, ExpectedSize expected, boolean named) {
        PageFacts worst = pages.get(0);
        for (PageFacts p : pages) {
            if (expected.deviationMm(p) > expected.deviationMm(worst)) {
                worst = p;
            }
        }
        double off = expected.deviationMm(worst);
        double tolerance = expected.toleranceMm(worst);
        int count = pages.size();
        String message = (count == 1 ? "1 page differs" : count + " pages differ") + " in size from "
                + (named ? "the job, " : "most pages, ") + expected.text(measures) + ". "
                + (count == 1 ? "Page " : "Worst: page ") + worst.page() + ", "
                + ExpectedSize.text(measures, sizes, worst) + ", off by "
                + measures.beside(Length.ofMeasuredMm(off), Length.ofMeasuredMm(tolerance)) + "; tolerance "
                + measures.beside(Length.ofMeasuredMm(tolerance), Length.ofMeasuredMm(off)) + ".";
        return Finding.measured(
                named ? "page-size" : "page-size-mixed",
                named ? Severity.ERROR : Severity.WARNING,
                numbers(pages),
                message,
                named
                        ? "Ask for these pages at the job's size, correct the job (trim), or allow their size (other-sizes)."
                        : "Ask the client. If they are intended, allow their size (other-sizes); otherwise give the size of all"
                                + " pages (trim).",
                off,
                tolerance);
    }

    private static Finding rotated(Measures measures, List<PageFacts> pages, ExpectedSize expected, boolean named) {
        int count = pages.size();
        return Say.onPages(
                "page-rotated",
                named ? Severity.ERROR : Severity.WARNING,
                numbers(pages),
                (count == 1 ? "1 page is" : count + " pages are") + " rotated 90 degrees from "
                        + expected.text(measures) + ". The edge checked there is not the one that is punched.",
                "Rotate these pages in the PDF, or declare them if they are to lie rotated in the book (rotated)."
                        + " Then check again.");
    }

    private static List<Integer> numbers(List<PageFacts> pages) {
        return pages.stream().map(PageFacts::page).toList();
    }
}
