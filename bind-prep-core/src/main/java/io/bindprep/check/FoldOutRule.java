package io.bindprep.check;

import io.bindprep.job.BindingEdge;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.page.PageFacts;
import io.bindprep.run.Fold;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
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
                        "Fold-out of " + fold.panels() + " panels: its leaf is "
                                + s.measures().mark(fold.flat()) + " wide, no wider than the book.",
                        "Ask for the wide page, or take these pages off the list of fold-outs (fold-outs)."));
            } else if (!fold.fits()) {
                findings.add(tooWide(s.measures(), fold));
            }
        }
        return findings;
    }

    private static Finding tooWide(Measures measures, Fold fold) {
        return Finding.measured(
                "fold-out-too-wide",
                Severity.ERROR,
                fold.pages(),
                "Fold-out too wide: " + measures.mark(fold.flat()) + ". Folded in " + fold.panels()
                        + " panels, clear of the holes and the trim, it may be " + measures.mark(fold.most()) + ".",
                fold.fewest() == Integer.MAX_VALUE
                        ? "Print it smaller. The book is too narrow to fold anything in."
                        : "Fold it in " + fold.fewest() + " panels (fold-outs), or have the page made narrower.",
                fold.flat().mm(),
                fold.most().mm());
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
        return Finding.measured(
                "fold-out-undeclared",
                named ? Severity.ERROR : Severity.WARNING,
                numbers,
                Say.pages(pages.size()) + (pages.size() == 1 ? " looks" : " look")
                        + " like a fold-out: up to " + s.measures().mark(flat) + " wide (page " + widest.page()
                        + "); the book is " + s.measures().mark(book) + " wide.",
                panels <= MOST_PANELS
                        ? "Fold it in " + panels + " panels (fold-outs: " + PageLists.compact(numbers, 3) + " in "
                                + panels + " panels), or ask for it at the book's size."
                        : "Ask for it at the book's size.",
                flat.mm(),
                book.mm());
    }

    private static final int MOST_PANELS = 8;

    private static boolean top(Situation s) {
        return s.job().bindingEdge() == BindingEdge.TOP;
    }

    private static Length away(PageFacts p, boolean top) {
        return top ? p.trimHeight() : p.trimWidth();
    }
}
