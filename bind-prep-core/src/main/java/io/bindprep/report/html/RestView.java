package io.bindprep.report.html;

import io.bindprep.check.PageReport;
import io.bindprep.check.Say;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.wording.Measures;
import java.util.List;

/** A page that is not clear and has no picture here, in a line. */
public record RestView(int page, String verdict, String what) {
    /** The id that links lead to. */
    public String id() {
        return PageLink.id(page);
    }

    static RestView of(PageReport page, Measures measures) {
        return new RestView(page.facts().page(), Texts.lower(page.verdict().verdict()), what(page, measures));
    }

    private static String what(PageReport page, Measures measures) {
        String unchecked = page.verdict().unchecked();
        if (unchecked != null) {
            return "not read whole: " + unchecked;
        }
        List<Hit> hits = page.verdict().hits();
        if (hits.isEmpty()) {
            return "";
        }
        Mark worst = hits.get(0).mark();
        List<Integer> pins = hits.get(0).pins();
        String words = Texts.clean(worst.words());
        return Texts.lower(worst.kind()) + (words.isEmpty() ? "" : " \"" + words + "\"") + ", "
                + measures.mark(worst.nearMm()) + " from the binding edge, "
                + measures.marks(worst.alongStartMm(), worst.alongEndMm()) + " from "
                + EdgeFrame.of(page).origin() + (pins.isEmpty() ? "" : ", " + Say.pins(pins))
                + (hits.size() == 1 ? "" : "; " + (hits.size() - 1) + " more");
    }
}
