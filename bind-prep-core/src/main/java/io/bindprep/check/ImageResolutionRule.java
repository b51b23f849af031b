package io.bindprep.check;

import io.bindprep.marks.PageBasics;
import io.bindprep.marks.PageVerdict;
import io.bindprep.wording.LengthText;
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
                "A picture has fewer than " + least + " dots an inch at its printed size on "
                        + (pages.size() == 1 ? "page " : Say.pages(pages.size()) + "; the coarsest on page ") + where
                        + ": " + Math.round(coarsest.ppi()) + " dots an inch at " + LengthText.mm(coarsest.widthMm())
                        + " by " + LengthText.mm(coarsest.heightMm()) + ".",
                "Ask for the picture in its original size, or accept it by a smaller image-ppi."));
    }
}
