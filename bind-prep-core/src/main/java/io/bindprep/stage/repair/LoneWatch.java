package io.bindprep.stage.repair;

import io.bindprep.block.PagePlace;
import io.bindprep.files.PdfSource;
import io.bindprep.marks.Painted;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.pdf.edit.PageThings;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.LoneMove;
import io.bindprep.repair.LonePlan;
import io.bindprep.stage.PageLook;
import io.bindprep.stage.TimeLimit;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Watches the check of a changed copy: nothing but what was to move may be elsewhere, or gone. */
final class LoneWatch implements PageLook {
    /** Numbers in a PDF are single floats, and offsets are written with six decimals. */
    private static final double SAME_MM = 0.02;

    private final PaintedPages found;
    private final Map<Integer, List<LoneMove>> moved = new TreeMap<>();
    private final Map<Integer, Boolean> strayed = new ConcurrentHashMap<>();

    /**
     * A watch.
     *
     * @param found what the pages painted before
     * @param numberAfter of a page in the changed copy
     */
    LoneWatch(LonePlan plan, PaintedPages found, IntUnaryOperator numberAfter) {
        this.found = found;
        LoneRepair.byPage(plan).forEach((page, moves) -> moved.put(numberAfter.applyAsInt(page), moves));
    }

    @Override
    public void look(OpenedPdf copy, PagePlace place, boolean near) {
        List<LoneMove> moves = moved.get(place.page());
        PageThings was = moves == null ? null : found.kept(moves.get(0).page());
        if (moves != null && was != null) {
            compare(copy, place.page(), was.painted(), moves);
            found.drop(moves.get(0).page());
        }
    }

    private void compare(OpenedPdf copy, int page, @Nullable List<Painted> was, List<LoneMove> moves) {
        PageThings is = copy.things(page, moves.get(0).bindingEdge());
        strayed.put(page, was == null || is == null || !same(was, is.painted(), moves));
    }

    /** Pages of the input on which anything is not where it was, or not there; those not seen yet are looked at now. */
    Set<Integer> strayed(PdfSource source, PdfSource copy) throws UnreadableInputException, SettingException {
        Map<Integer, List<LoneMove>> rest = new TreeMap<>(moved);
        rest.keySet().removeAll(strayed.keySet());
        if (!rest.isEmpty()) {
            TimeLimit.run(source.name(), limit -> {
                try (OpenedPdf before = Intake.known(source, "");
                        OpenedPdf after = Intake.known(copy, "")) {
                    limit.extendFor(2 * rest.size());
                    rest.forEach((page, moves) -> compare(after, page, painted(before, moves), moves));
                }
                return strayed;
            });
        }
        Set<Integer> pages = new TreeSet<>();
        moved.forEach((page, moves) -> {
            if (strayed.getOrDefault(page, true)) {
                pages.add(moves.get(0).page());
            }
        });
        return pages;
    }

    private @Nullable List<Painted> painted(OpenedPdf before, List<LoneMove> moves) {
        int page = moves.get(0).page();
        PageEdge edge = moves.get(0).bindingEdge();
        return found.of(page, () -> before.things(page, edge));
    }

    private static boolean same(List<Painted> was, List<Painted> is, List<LoneMove> moves) {
        if (was.size() != is.size()) {
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
