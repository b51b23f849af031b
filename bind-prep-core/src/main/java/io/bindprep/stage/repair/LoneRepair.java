package io.bindprep.stage.repair;

import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.files.PdfSource;
import io.bindprep.marks.Painted;
import io.bindprep.marks.Verdict;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.pdf.edit.EditedPdf;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.LoneMove;
import io.bindprep.repair.LonePlan;
import io.bindprep.repair.LonePlanner;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.stage.TimeLimit;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;

/** The stages of a repair that moves single things: what each page paints, their moves, and that nothing else changed. */
final class LoneRepair {
    /** Numbers in a PDF are single floats, and offsets are written with six decimals. */
    private static final double SAME_MM = 0.02;

    private LoneRepair() {}

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
        return found.of(number, () -> pdf.painted(number, page.place().bindingEdge()));
    }

    /** Moves of one page put together: all of one distance at a time. */
    static Map<Integer, List<LoneMove>> byPage(LonePlan plan) {
        Map<Integer, List<LoneMove>> byPage = new TreeMap<>();
        plan.moves()
                .forEach(m ->
                        byPage.computeIfAbsent(m.page(), k -> new ArrayList<>()).add(m));
        return byPage;
    }

    static void apply(EditedPdf pdf, LonePlan plan) {
        byPage(plan)
                .forEach((page, moves) -> pdf.moveAlone(
                        page,
                        moves.stream()
                                .map(m -> new EditedPdf.AloneMove(m.move(), m.numbers(), m.box()))
                                .toList()));
    }

    /**
     * Pages on which anything but what was to move is not where it was, or is not there.
     *
     * @param found what the pages painted before
     * @param numberAfter of a page in the changed copy
     */
    static Set<Integer> strayed(
            PdfSource source, Path made, LonePlan plan, PaintedPages found, IntUnaryOperator numberAfter)
            throws UnreadableInputException, SettingException {
        if (plan.moves().isEmpty()) {
            return Set.of();
        }
        return TimeLimit.run(source.name(), limit -> {
            Set<Integer> strayed = new TreeSet<>();
            Map<Integer, List<LoneMove>> pages = byPage(plan);
            boolean kept = pages.keySet().stream().allMatch(found::has);
            try (OpenedPdf was = kept ? null : Intake.known(source, "");
                    OpenedPdf is = Intake.known(new PdfSource(made, source.name(), null), "")) {
                limit.extendFor(2 * pages.size());
                EditedPdf before = was == null ? null : was.edit();
                EditedPdf after = is.edit();
                pages.forEach((page, moves) -> {
                    PageEdge edge = moves.get(0).bindingEdge();
                    List<Painted> as = found.of(page, () -> before == null ? null : before.painted(page, edge));
                    if (!same(as, after.painted(numberAfter.applyAsInt(page), edge), moves)) {
                        strayed.add(page);
                    }
                });
            }
            return strayed;
        });
    }

    private static boolean same(@Nullable List<Painted> was, @Nullable List<Painted> is, List<LoneMove> moves) {
        if (was == null || is == null || was.size() != is.size()) {
            return false;
        }
        Map<Integer, Double> away = new TreeMap<>();
        moves.forEach(m -> m.numbers().forEach(n -> away.put(n, m.awayMm())));
        for (int i = 0; i < was.size(); i++) {
            Rectangle2D a = was.get(i).box();
            Rectangle2D b = is.get(i).box();
            double x = away.getOrDefault(was.get(i).number(), 0.0);
            if (Math.abs(a.getMinX() + x - b.getMinX()) > SAME_MM
                    || Math.abs(a.getMaxX() + x - b.getMaxX()) > SAME_MM
                    || Math.abs(a.getMinY() - b.getMinY()) > SAME_MM
                    || Math.abs(a.getMaxY() - b.getMaxY()) > SAME_MM
                    || was.get(i).kind() != is.get(i).kind()) {
                return false;
            }
        }
        return true;
    }
}
