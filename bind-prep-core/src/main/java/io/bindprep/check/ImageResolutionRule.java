package io.bindprep.check;

import io.bindprep.marks.PageBasics;
import io.bindprep.marks.PageVerdict;
import java.util.ArrayList;
import java.util.List;

/** {@code image-resolution}: a picture with too few dots for the size it is printed at. */
final class ImageResolutionRule implements Rule {
    /** Whole dots an inch are asked for: what rounds up to them will do. */
    private static final double ROUNDING = 0.5;

    @Override
    public List<Finding> find(Situation s) {
        int least = s.job().printLimits().imagePpi();
        List<Integer> pages = new ArrayList<>();
        PageBasics.Picture coarsest = null;
        int where = 0;
        for (PageVerdict v : s.verdicts()) {
            PageBasics.Picture p = v.basics().coarsest();
            if (p == null || p.ppi() >= least - ROUNDING) {
                continue;
            }
            pages.add(v.page());
            if (coarsest == null || p.ppi() < coarsest.ppi()) {
                coarsest = p;
                where = v.page();
            }
        }
        if (coarsest == null) {
            return List.of();
        }
        return List.of(Say.onPages(
                "image-resolution",
                Severity.WARNING,
                pages,
                (pages.size() == 1
                                ? "Page "
                                : Say.pages(pages.size()) + " with pictures of low resolution. Worst on page ")
                        + where + ": picture of " + Math.round(coarsest.ppi()) + " ppi at "
                        + s.measures().mark(coarsest.widthMm()) + " by "
                        + s.measures().mark(coarsest.heightMm()) + "; at least " + least + " ppi required.",
                "Ask for the picture at its original size, or accept a lower resolution (image-ppi)."));
    }
}
