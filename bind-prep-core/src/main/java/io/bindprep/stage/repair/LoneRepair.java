package io.bindprep.stage.repair;

import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.marks.Painted;
import io.bindprep.marks.Verdict;
import io.bindprep.pdf.edit.EditedPdf;
import io.bindprep.repair.LoneMove;
import io.bindprep.repair.LonePlan;
import io.bindprep.repair.LonePlanner;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.stage.PageLook;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The stages of a repair that moves single things: what each page paints, and their moves; {@link LoneWatch} is the last. */
final class LoneRepair {
    private LoneRepair() {}

    /** A look that finds what pages paint which may not be clear, while their check has them open. */
    static PageLook look(ShiftSettings settings, PaintedPages found) {
        return (pdf, place, near) -> {
            if (near && !settings.keeps(place.page())) {
                found.of(place.page(), () -> pdf.things(place.page(), place.bindingEdge()));
            }
        };
    }

    static LonePlan plan(EditedPdf pdf, Report before, ShiftSettings settings, double clearMm, PaintedPages found) {
        List<PageReport> pages = before.pages().stream()
                .filter(p -> !settings.keeps(p.facts().page()))
                .toList();
        LonePlanner planner = new LonePlanner(settings, clearMm, before.pages().size(), before.measures());
        List<PageReport> near = pages.stream()
                .filter(p -> p.verdict().verdict() != Verdict.CLEAR)
                .toList();
        if (near.isEmpty()) {
            return LonePlan.NONE;
        }
        near.forEach(p -> planner.nearPage(p, painted(pdf, p, found)));
        pages.stream().filter(planner::asksFor).forEach(p -> planner.page(p, painted(pdf, p, found)));
        return planner.plan();
    }

    private static @Nullable List<Painted> painted(EditedPdf pdf, PageReport page, PaintedPages found) {
        int number = page.facts().page();
        return found.of(number, () -> pdf.things(number, page.place().bindingEdge()));
    }

    /** Moves of one page put together: all of one distance at a time. */
    static Map<Integer, List<LoneMove>> byPage(LonePlan plan) {
        Map<Integer, List<LoneMove>> byPage = new TreeMap<>();
        plan.moves()
                .forEach(m ->
                        byPage.computeIfAbsent(m.page(), k -> new ArrayList<>()).add(m));
        return byPage;
    }

    static void apply(EditedPdf pdf, LonePlan plan, PaintedPages found) {
        byPage(plan)
                .forEach((page, moves) -> pdf.moveAlone(
                        page,
                        moves.stream()
                                .map(m -> new EditedPdf.AloneMove(m.move(), m.numbers(), m.box()))
                                .toList(),
                        found.kept(page)));
    }
}
