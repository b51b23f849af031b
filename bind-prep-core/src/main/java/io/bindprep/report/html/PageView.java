package io.bindprep.report.html;

import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.marks.Hit;
import io.bindprep.marks.PageVerdict;
import io.bindprep.picture.CloseUp;
import io.bindprep.picture.PagePicture;
import io.bindprep.picture.Picture;
import io.bindprep.wording.Measures;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A page that is not clear, with its picture.
 *
 * @param facts its size, side and binding edge in one line
 * @param unchecked why it could not be analysed whole; null where it was
 * @param problem why there is no picture, or what is missing in it; null where it is whole
 * @param origin where lengths along the binding edge are counted from
 * @param mostHits how many marks are listed at most, where that many are; else 0
 * @param lying whether the binding edge lies at the top or bottom, so that close-ups are wide
 */
public record PageView(
        int page,
        String verdict,
        String facts,
        @Nullable String unchecked,
        @Nullable String problem,
        @Nullable Drawing whole,
        List<Labelled> closeUps,
        List<HitView> hits,
        String origin,
        int mostHits,
        boolean lying) {
    /** A close-up and what stands under it. */
    public record Labelled(String letter, String caption, Drawing drawing) {}

    public PageView {
        closeUps = List.copyOf(closeUps);
        hits = List.copyOf(hits);
    }

    /** The id that links lead to. */
    public String id() {
        return PageLink.id(page);
    }

    static PageView of(Report report, PageReport page, PagePicture picture) {
        Measures measures = report.measures();
        EdgeFrame frame = EdgeFrame.of(page);
        FigureDrawing draughtsman = new FigureDrawing(report.plan(), page, measures);
        Picture whole = picture.whole();
        List<Labelled> closeUps = new ArrayList<>();
        for (CloseUp c : picture.closeUps()) {
            int i = closeUps.size();
            String caption = measures.marks(c.window().startMm(), c.window().endMm()) + " from " + frame.origin()
                    + "; bar " + measures.set(FigureDrawing.bar(measures));
            closeUps.add(new Labelled(FigureDrawing.letter(i), caption, draughtsman.closeUp(c, picture.depthMm(), i)));
        }
        List<HitView> hits = new ArrayList<>();
        for (Hit hit : page.verdict().hits()) {
            hits.add(HitView.of(hits.size() + 1, hit, measures));
        }
        return new PageView(
                page.facts().page(),
                Texts.lower(page.verdict().verdict()),
                measures.area(page.facts().trimWidth(), page.facts().trimHeight()) + ", "
                        + (page.place().recto() ? "recto" : "verso") + ", bound at its " + frame.name() + " edge",
                page.verdict().unchecked(),
                picture.problem(),
                whole == null ? null : draughtsman.whole(whole, picture),
                closeUps,
                hits,
                frame.origin(),
                hits.size() == PageVerdict.MOST_HITS ? PageVerdict.MOST_HITS : 0,
                !frame.edge().upright());
    }
}
