package io.bindprep.check;

import io.bindprep.job.BindingEdge;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.page.PageFacts;
import io.bindprep.run.Fold;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;

/**
 * {@code fold-out-too-wide}: does not fold into its panels clear of trim and holes; {@code fold-out-not-wide}: there is
 * nothing to fold; {@code fold-out-undeclared}, which {@link SizeRule} asks for: a page about twice or three times as wide
 * that the job does not call a fold-out.
 */
final class FoldOutRule implements Rule {
    /** From here on a page counts as meant to be folded; our own, no source. */
    private static final double LEAST_RATIO = 1.5;

    /** Folded in more panels a leaf is rather a poster. */
    private static final double MOST_RATIO = 4.05;

    @Override
    public List<Finding> find(Situation s) {
        List<Finding> findings = new ArrayList<>();
        for (Fold fold : s.run().folds()) {
            if (!fold.wide()) {
                findings.add(Say.onPages(
                        "fold-out-not-wide",
                        Severity.WARNING,
                        fold.pages(),
                        "Declared as a fold-out of " + fold.panels() + " panels, but its leaf reaches "
                                + LengthText.both(fold.flat()) + " from the binding edge, no further than the book's.",
                        "Take these pages out of fold-outs, or ask for the wide page."));
            } else if (!fold.fits()) {
                findings.add(tooWide(fold));
            }
        }
        return findings;
    }

    private static Finding tooWide(Fold fold) {
        return new Finding(
                "fold-out-too-wide",
                Severity.ERROR,
                fold.pages(),
                "Folded in " + fold.panels() + " panels the leaf may reach " + LengthText.both(fold.most())
                        + " from the binding edge, so that its folds keep clear of the hole zone and the trim; it reaches "
                        + LengthText.both(fold.flat()) + ".",
                fold.fewest() == Integer.MAX_VALUE
                        ? "Print it smaller: the book is too narrow to fold anything in."
                        : "Fold it in " + fold.fewest() + " panels (fold-outs), or have the page made narrower.",
                fold.flat().mm(),
                fold.most().mm(),
                null);
    }

    /** Returns true if a page of another size looks like a fold-out: as long at the binding edge, half as wide again or more. */
    static boolean foldable(Situation s, ExpectedSize expected, PageFacts p) {
        boolean top = top(s);
        double ratio = away(p, top).mm() / (top ? expected.height() : expected.width()).mm();
        return expected.fitsAlong(p, top) && ratio >= LEAST_RATIO && ratio <= MOST_RATIO;
    }

    static Finding undeclared(Situation s, ExpectedSize expected, List<PageFacts> pages, boolean named) {
        boolean top = top(s);
        Length book = top ? expected.height() : expected.width();
        PageFacts widest = pages.get(0);
        for (PageFacts p : pages) {
            widest = away(p, top).compareTo(away(widest, top)) > 0 ? p : widest;
        }
        Length flat = away(widest, top);
        int panels =
                Fold.fewest(flat, book, SpecialLeaves.FOLD_ALLOWANCE, s.plan().holeZone());
        List<Integer> numbers = pages.stream().map(PageFacts::page).toList();
        return new Finding(
                "fold-out-undeclared",
                named ? Severity.ERROR : Severity.WARNING,
                numbers,
                Say.pages(pages.size()) + (pages.size() == 1 ? " is" : " are") + " as long at the binding edge as "
                        + expected.text() + " but up to "
                        + LengthText.plain(java.math.BigDecimal.valueOf(flat.mm() / book.mm()), 2)
                        + " times as far from it (page " + widest.page() + ", " + flat.inMm()
                        + "): a fold-out, by the look of it.",
                panels <= MOST_PANELS
                        ? "Name it under fold-outs (" + PageLists.compact(numbers, 3) + " in " + panels
                                + " panels keep clear of the holes and the trim), or ask for it at the book's size."
                        : "Ask for it at the book's size.",
                flat.mm(),
                book.mm(),
                null);
    }

    private static final int MOST_PANELS = 8;

    private static boolean top(Situation s) {
        return s.job().bindingEdge() == BindingEdge.TOP;
    }

    private static Length away(PageFacts p, boolean top) {
        return top ? p.trimHeight() : p.trimWidth();
    }
}
