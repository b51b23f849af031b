package io.bindprep.stage.repair;

import io.bindprep.check.PageReport;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.marks.Verdict;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.repair.PageRoom;
import java.util.List;

/** Marks at a page's other edges. */
final class OuterEdge {
    /** Distance from an edge at which a mark runs off it; a sheet is cut no truer (ISO 216 allows 1.5 mm and more). */
    static final double BLEED_MM = 0.5;
    /** As deep as a mark has to be looked at to tell that it is broad. */
    private static final double LOOK_MM = 4;

    private OuterEdge() {}

    /**
     * The room of a page.
     *
     * @param depthMm how deep the outer edge matters; 0 where nothing is going to move
     */
    static PageRoom room(OpenedPdf pdf, PageReport page, double depthMm) {
        PageEdge edge = page.place().bindingEdge();
        PageMarks marks = depthMm > 0
                ? pdf.scan(page.facts().page(), edge.opposite(), depthMm)
                : new PageMarks(page.facts().page(), List.of(), null);
        Mark outer = null;
        boolean bleeds = false;
        for (Mark mark : marks.marks()) {
            boolean runsOff = runsOff(mark);
            bleeds |= runsOff;
            if (!runsOff && (outer == null || mark.nearMm() < outer.nearMm())) {
                outer = mark;
            }
        }
        String unchecked = page.verdict().unchecked();
        boolean clear = page.verdict().verdict() == Verdict.CLEAR;
        return new PageRoom(
                page.facts().page(),
                edge,
                page.facts().across(edge).mm(),
                clear ? null : page.verdict().nearest(),
                outer,
                bleeds,
                unchecked == null ? marks.unchecked() : unchecked);
    }

    /** Returns true if art runs off a page at an edge. */
    static boolean bleeds(OpenedPdf pdf, int page, PageEdge edge) {
        return pdf.scan(page, edge, LOOK_MM).marks().stream().anyMatch(OuterEdge::runsOff);
    }

    private static boolean runsOff(Mark mark) {
        return mark.kind() == MarkKind.BACKGROUND || mark.kind() != MarkKind.TEXT && mark.nearMm() <= BLEED_MM;
    }
}
