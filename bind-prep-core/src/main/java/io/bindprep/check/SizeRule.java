package io.bindprep.check;

import io.bindprep.job.Trim;
import io.bindprep.page.PageFacts;
import io.bindprep.paper.SheetSizes;
import io.bindprep.unit.LengthText;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code page-size}: not the size the job names; {@code page-size-mixed}: not the size most pages have, where the job
 * names none; {@code page-turn}: that size, but turned a quarter.
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
        List<PageFacts> turned = new ArrayList<>();
        for (PageFacts p : pages) {
            if (expected.fits(p.trimWidth(), p.trimHeight())) {
                continue;
            }
            (expected.fits(p.trimHeight(), p.trimWidth()) ? turned : other).add(p);
        }
        List<Finding> findings = new ArrayList<>();
        if (!other.isEmpty()) {
            findings.add(otherSize(sizes, other, expected, trim != null));
        }
        if (!turned.isEmpty()) {
            findings.add(turned(turned, expected, trim != null));
        }
        return findings;
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
                        ? "Ask for these pages at the job's size, or set trim to the size that is wanted."
                        : "Ask whether these pages are meant so; set trim to the size that all should have.",
                off,
                tolerance,
                null);
    }

    private static Finding turned(List<PageFacts> pages, ExpectedSize expected, boolean named) {
        int count = pages.size();
        return Say.onPages(
                "page-turn",
                named ? Severity.ERROR : Severity.WARNING,
                numbers(pages),
                (count == 1 ? "1 page has" : count + " pages have") + " the size " + expected.text()
                        + " but turned a quarter, so the bound edge checked is not the one that is punched.",
                "Turn these pages in the PDF so that all stand alike, and check again.");
    }

    private static String hundredths(double mm) {
        return LengthText.plain(BigDecimal.valueOf(mm), 2) + " mm";
    }

    private static List<Integer> numbers(List<PageFacts> pages) {
        return pages.stream().map(PageFacts::page).toList();
    }
}
