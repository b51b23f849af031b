package io.bindprep.repair;

import io.bindprep.job.PageRange;
import io.bindprep.page.Move;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import io.bindprep.wording.PageLists;
import io.bindprep.wording.Terms;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Chooses the least move that brings content clear of the holes, or the least scaling where the outer margin has no room
 * for the move, or says with the numbers why neither will do.
 *
 * <p>A point x from the binding edge goes to s x + t. The nearest mark n has to reach c: s n + t &gt;= c. The outermost mark,
 * W - e from the binding edge, has to keep f from the outer edge: s (W - e) + t &lt;= W - f, where f is the outer margin or,
 * for a mark that stands nearer already, its own distance. With s = 1 that asks for t = c - n &lt;= e - f; else the largest s
 * is (W - f - c) / (W - e - n), of several pages the smallest.
 */
public final class MovePlanner {
    /** Moves are whole hundredths of a millimetre, so that the number printed is the number done. */
    private static final double STEPS_PER_MM = 100;
    /** Scales are whole hundredths of a percent. */
    private static final double SCALE_STEPS = 10_000;

    private static final double SLACK_MM = 1e-6;
    /** Numbers in a PDF are single floats. */
    private static final double FLOAT_SLACK_MM = 0.005;

    private static final int MOST_RANGES = 8;
    /** More pages than these are no exception. */
    private static final int MOST_KEPT = 12;

    private final ShiftSettings settings;
    private final double clearMm;
    private final double zoneMm;
    private final List<PageRoom> rooms;
    private final Measures measures;
    private final MarginWords words;

    private MovePlanner(
            ShiftSettings settings, double clearMm, double zoneMm, List<PageRoom> rooms, Measures measures) {
        this.measures = measures;
        this.words = new MarginWords(measures, clearMm);
        this.settings = settings;
        this.clearMm = clearMm;
        this.zoneMm = zoneMm;
        this.rooms = rooms;
    }

    /**
     * The moves of a document.
     *
     * @param clearMm what keeps this far from the binding edge is clear
     * @param zoneMm reach of the holes, tolerance included
     * @param rooms every page in order
     * @param measures units of its words
     */
    public static MovePlan plan(
            ShiftSettings settings, double clearMm, double zoneMm, List<PageRoom> rooms, Measures measures) {
        List<PageRoom> moving =
                rooms.stream().filter(room -> !settings.keeps(room.page())).toList();
        MovePlan plan = moving.isEmpty()
                ? new MovePlan(moves(moving, 0, 1), List.of(), Refusal.NONE)
                : new MovePlanner(settings, clearMm, zoneMm, moving, measures).plan();
        if (moving.size() == rooms.size() || !plan.refusal().isEmpty()) {
            return plan;
        }
        Iterator<Move> moves = plan.moves().iterator();
        return new MovePlan(
                rooms.stream()
                        .map(room -> settings.keeps(room.page()) ? new Move(room.bindingEdge(), 0, 1) : moves.next())
                        .toList(),
                plan.because(),
                Refusal.NONE);
    }

    /** A way out for pages that block all the others; nothing where that is every page. */
    public static Optional<String> leaving(ShiftSettings settings, Collection<Integer> blocking, int pages) {
        TreeSet<Integer> kept = new TreeSet<>(blocking);
        for (PageRange range : settings.keep()) {
            IntStream.rangeClosed(range.first(), Math.min(range.last(), pages)).forEach(kept::add);
        }
        return blocking.isEmpty() || kept.size() >= pages
                ? Optional.empty()
                : Optional.of("Leave these pages as they are, with their findings, and move the others (keep \""
                        + PageLists.compact(List.copyOf(kept)) + "\").");
    }

    /**
     * Depth of the outer edge that must be known to plan the moves of these pages.
     *
     * @param nearest least distance of a mark from the binding edge on any page, millimetres
     */
    public static double outerDepthMm(ShiftSettings settings, double clearMm, double nearest) {
        Length gutter = settings.gutter();
        double move = gutter == null ? Math.max(0, clearMm - nearest) : gutter.mm();
        return move + settings.outerMargin().mm() + 1;
    }

    private MovePlan plan() {
        Length gutter = settings.gutter();
        if (gutter != null) {
            return byGutter(gutter);
        }
        List<PageRoom> unchecked =
                rooms.stream().filter(r -> r.unchecked() != null).toList();
        if (!unchecked.isEmpty()) {
            return refused(
                    RefusalReason.NOT_READ,
                    blocking(unchecked),
                    unchecked.stream()
                            .map(r -> "Page " + r.page() + " could not be read whole: " + r.unchecked()
                                    + ". Nobody knows how far its content may move. Move all pages by a length of your"
                                    + " own (gutter).")
                            .toList());
        }
        return settings.pageByPage() ? pageByPage() : together();
    }

    private MovePlan byGutter(Length gutter) {
        double t = gutter.mm();
        List<PageRoom> cut = rooms.stream()
                .filter(r -> r.outerMm() < t - FLOAT_SLACK_MM)
                .sorted(Comparator.comparingDouble(PageRoom::outerMm))
                .toList();
        if (!cut.isEmpty()) {
            PageRoom worst = cut.get(0);
            return refused(
                    RefusalReason.OFF_THE_PAGE,
                    blocking(cut),
                    List.of("Moved by " + measures.exact(gutter) + ", content would run off the outer edge of "
                            + pages(cut) + ". Page " + worst.page() + " has " + words.outerMark(worst) + ". Move by "
                            + measures.down(Length.ofMeasuredMm(worst.outerMm())) + " or less (gutter)."));
        }
        List<String> because = new ArrayList<>();
        because.add("Every page moves by " + measures.exact(gutter) + ", as asked (gutter).");
        least(rooms).ifPresent(r -> because.add(words.kept(r, t)));
        return new MovePlan(moves(rooms, t, 1), because, Refusal.NONE);
    }

    private MovePlan together() {
        List<PageRoom> needy = needy();
        if (needy.isEmpty()) {
            return new MovePlan(moves(rooms, 0, 1), List.of(), Refusal.NONE);
        }
        Fit fit = fit(rooms, clearMm);
        if (fit.scale < settings.minimumScale()) {
            List<String> reasons = new ArrayList<>(List.of(tooSmall(fit)));
            List<Integer> blocking = exceptions();
            if (needy.size() < rooms.size()
                    && needy.stream().allMatch(r -> fit(List.of(r), clearMm).scale >= settings.minimumScale())) {
                blocking = List.of();
                reasons.add("Move only " + pages(needy) + (needy.size() == 1 ? ", by" : ", each by")
                        + " its own distance" + " (page-by-page).");
            }
            narrower(rooms).ifPresent(reasons::add);
            return refused(RefusalReason.NO_ROOM, blocking, reasons);
        }
        return new MovePlan(moves(rooms, fit.away, fit.scale), because(fit), Refusal.NONE);
    }

    private MovePlan pageByPage() {
        List<Move> moves = new ArrayList<>();
        List<String> reasons = new ArrayList<>();
        List<String> because = new ArrayList<>();
        List<Integer> blocking = new ArrayList<>();
        for (PageRoom room : rooms) {
            if (room.nearMm() >= clearMm) {
                moves.add(new Move(room.bindingEdge(), 0, 1));
                continue;
            }
            Fit fit = fit(List.of(room), clearMm);
            if (fit.scale < settings.minimumScale()) {
                blocking.add(room.page());
                reasons.add(tooSmall(fit));
                narrower(List.of(room)).ifPresent(reasons::add);
            }
            moves.add(new Move(room.bindingEdge(), fit.away, fit.scale));
        }
        needy().stream().min(Comparator.comparingDouble(PageRoom::nearMm)).ifPresent(r -> because.add(words.needs(r)));
        return reasons.isEmpty()
                ? new MovePlan(moves, because, Refusal.NONE)
                : refused(RefusalReason.NO_ROOM, blocking, reasons);
    }

    private static List<Integer> blocking(List<PageRoom> rooms) {
        return rooms.stream().map(PageRoom::page).toList();
    }

    /** Few pages without which the others can move together, nearest to the binding edge first; none where it takes many. */
    private List<Integer> exceptions() {
        List<PageRoom> rest = new ArrayList<>(rooms);
        List<Integer> without = new ArrayList<>();
        while (without.size() < MOST_KEPT && rest.size() > 1) {
            Fit fit = fit(rest, clearMm);
            if (fit.scale >= settings.minimumScale()) {
                return without;
            }
            PageRoom worst = fit(List.of(fit.outer), clearMm).scale < fit(List.of(fit.near), clearMm).scale
                    ? fit.outer
                    : fit.near;
            rest.remove(worst);
            without.add(worst.page());
        }
        return List.of();
    }

    /** One move for several pages, and the two that decided it. */
    private record Fit(double away, double scale, PageRoom near, PageRoom outer) {}

    private Fit fit(List<PageRoom> pages, double clear) {
        PageRoom near =
                pages.stream().min(Comparator.comparingDouble(PageRoom::nearMm)).orElseThrow();
        double n = near.nearMm();
        double t = up(clear - n);
        PageRoom outer = pages.stream()
                .min(Comparator.comparingDouble(r -> r.outerMm() - t - keep(r)))
                .orElseThrow();
        if (outer.outerMm() - t >= keep(outer) - SLACK_MM) {
            return new Fit(t, 1, near, outer);
        }
        double scale = 1;
        for (PageRoom r : pages) {
            double most = r.outer() == null ? 1 : (r.acrossMm() - keep(r) - clear) / (r.acrossMm() - r.outerMm() - n);
            if (most < scale) {
                scale = most;
                outer = r;
            }
        }
        double whole = Math.floor(Math.max(0, scale) * SCALE_STEPS + SLACK_MM) / SCALE_STEPS;
        return new Fit(up(clear - whole * n), whole, near, outer);
    }

    private double keep(PageRoom r) {
        return Math.min(settings.outerMargin().mm(), r.outerMm());
    }

    private List<PageRoom> needy() {
        return rooms.stream().filter(r -> r.nearMm() < clearMm).toList();
    }

    private static Optional<PageRoom> least(List<PageRoom> rooms) {
        return rooms.stream().filter(r -> r.outer() != null).min(Comparator.comparingDouble(PageRoom::outerMm));
    }

    private static List<Move> moves(List<PageRoom> rooms, double away, double scale) {
        return rooms.stream().map(r -> new Move(r.bindingEdge(), away, scale)).toList();
    }

    private MovePlan refused(RefusalReason reason, Collection<Integer> blocking, List<String> reasons) {
        List<String> all = new ArrayList<>(reasons);
        int kept = settings.keep().stream().mapToInt(PageRange::count).sum();
        leaving(settings, blocking, rooms.size() + kept).ifPresent(all::add);
        return new MovePlan(List.of(), List.of(), Refusal.of(reason, all));
    }

    private List<String> because(Fit fit) {
        List<String> because = new ArrayList<>();
        because.add(words.needs(fit.near));
        if (fit.scale < 1) {
            because.add("At full size, content would come too near the outer edge. Page " + fit.outer.page() + " has "
                    + words.outerMark(fit.outer) + ". So everything is scaled to " + MarginWords.percent(fit.scale)
                    + ".");
        } else if (fit.outer.outer() != null) {
            because.add(words.kept(fit.outer, fit.away));
        }
        return because;
    }

    private String tooSmall(Fit fit) {
        return "Page " + fit.near.page() + " has " + words.nearMark(fit.near) + ". Page " + fit.outer.page() + " has "
                + words.outerMark(fit.outer) + ", so there is no room to move. Scaling to "
                + MarginWords.percent(fit.scale)
                + " would be needed; minimum " + MarginWords.percent(settings.minimumScale()) + ".";
    }

    private static String pages(List<PageRoom> rooms) {
        List<Integer> numbers = rooms.stream().map(PageRoom::page).sorted().toList();
        return PageLists.named(numbers, MOST_RANGES);
    }

    private Optional<String> narrower(List<PageRoom> pages) {
        if (zoneMm >= clearMm || fit(pages, zoneMm).scale < settings.minimumScale()) {
            return Optional.empty();
        }
        return Optional.of("Or accept a " + Terms.BINDING_MARGIN + " of " + measures.up(Length.ofMeasuredMm(zoneMm))
                + " (binding-margin). The holes, tolerance included, reach so far.");
    }

    private static double up(double mm) {
        return Math.ceil(mm * STEPS_PER_MM - SLACK_MM) / STEPS_PER_MM;
    }
}
