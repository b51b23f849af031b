package io.bindprep.repair;

import io.bindprep.check.PageReport;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Painted;
import io.bindprep.marks.Verdict;
import io.bindprep.page.PageEdge;
import io.bindprep.repair.LoneMove.Zone;
import io.bindprep.repair.PageLayout.Group;
import io.bindprep.wording.Measures;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Chooses moves for what stands too near the binding edge by itself, while the text stays: page numbers, running heads, thumb
 * indexes. All in one zone of the book (head, foot, side) that are set alike move alike, mirrored on fronts and backs, so
 * that a head does not jump from page to page.
 *
 * <p>Told of the pages twice: first of those that are not clear, to learn what has to move and how far, then of all.
 */
public final class LonePlanner {
    private static final double STEPS_PER_MM = 100;
    private static final double SLACK_MM = 1e-6;
    private static final double FLOAT_SLACK_MM = 0.005;
    private static final double FOUND_MM = 0.5;
    private static final double SAME_MM = 0.3;
    private static final int MOST_SIDES = 3;
    /** Pages on which something stands at the same place, so that it is told as a head; at the side, where lists begin, more. */
    private static final int HEADS = 2;

    private static final int SIDES = 3;

    private final ShiftSettings settings;
    private final double clearMm;
    private final int pages;
    private final Measures measures;
    private final List<Pattern> patterns = new ArrayList<>();
    private final Map<Integer, Set<Integer>> near = new LinkedHashMap<>();
    private final Map<Zone, Need> needs = new EnumMap<>(Zone.class);
    private final Map<LoneFault, Set<Integer>> faults = new EnumMap<>(LoneFault.class);
    private final List<LoneMove> moves = new ArrayList<>();

    /** Place at which heads stand, the pages where one was found there, and those where it stands well clear of the text. */
    private record Pattern(
            Zone zone, PageEdge edge, Rectangle2D box, Set<Integer> near, Set<Integer> pages, Set<Integer> farther) {
        boolean same(Zone other, PageEdge e, Rectangle2D b) {
            return zone == other
                    && edge == e
                    && Math.abs(b.getMinX() - box.getMinX()) < SAME_MM
                    && Math.abs(b.getMaxX() - box.getMaxX()) < SAME_MM
                    && Math.abs(b.getMinY() - box.getMinY()) < SAME_MM
                    && Math.abs(b.getMaxY() - box.getMaxY()) < SAME_MM;
        }
    }

    private record Need(double mm, int page, Mark mark) {}

    /** A planner for a book of so many pages. */
    public LonePlanner(ShiftSettings settings, double clearMm, int pages, Measures measures) {
        this.settings = settings;
        this.clearMm = clearMm;
        this.pages = pages;
        this.measures = measures;
    }

    /** Takes in a page that is not clear; null where its content could not be read whole. */
    public void nearPage(PageReport page, @Nullable List<Painted> painted) {
        PageVerdict verdict = page.verdict();
        if (painted == null || verdict.verdict() == Verdict.UNCHECKED) {
            fault(LoneFault.UNREADABLE, verdict.page());
            return;
        }
        if (verdict.hits().stream().anyMatch(h -> h.mark().kind() == MarkKind.ANNOTATION)) {
            fault(LoneFault.ANNOTATION, verdict.page());
            return;
        }
        PageLayout layout = layout(page, painted);
        List<Painted> seeds = layout.content().stream()
                .filter(p -> p.box().getMinX() < clearMm - FLOAT_SLACK_MM)
                .filter(p -> verdict.hits().size() == PageVerdict.MOST_HITS
                        || mark(verdict, p.box()).isPresent())
                .toList();
        boolean all = verdict.hits().stream().allMatch(h -> seeds.stream().anyMatch(s -> meets(h.mark(), s.box())));
        if (seeds.isEmpty() || !all) {
            fault(LoneFault.PICTURE, verdict.page());
            return;
        }
        Optional<List<Group>> groups = layout.groups(seeds);
        if (groups.isEmpty()) {
            fault(LoneFault.TEXT, verdict.page());
            return;
        }
        groups.orElseThrow().forEach(group -> near(verdict, layout, group));
    }

    private void near(PageVerdict verdict, PageLayout layout, Group group) {
        Optional<Zone> zone = layout.zone(group);
        if (zone.isEmpty()) {
            fault(LoneFault.TEXT, verdict.page());
            return;
        }
        if (group.fixed()) {
            fault(LoneFault.HELD, verdict.page());
            return;
        }
        Zone in = zone.orElseThrow();
        Pattern pattern = patterns.stream()
                .filter(p -> p.same(in, layout.edge(), group.box()))
                .findFirst()
                .orElseGet(() -> {
                    Pattern added = new Pattern(
                            in, layout.edge(), group.box(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
                    patterns.add(added);
                    return added;
                });
        pattern.near.add(verdict.page());
        near.computeIfAbsent(verdict.page(), k -> new HashSet<>()).addAll(group.numbers());
        double mm = Math.ceil((clearMm - group.box().getMinX()) * STEPS_PER_MM - SLACK_MM) / STEPS_PER_MM;
        Need need = needs.get(in);
        if (need == null || mm > need.mm) {
            Mark mark = mark(verdict, group.box()).orElse(verdict.nearest());
            if (mark != null) {
                needs.put(in, new Need(mm, verdict.page(), mark));
            }
        }
    }

    /** Returns true if what a page paints is of interest, once all that are not clear were taken in. */
    public boolean asksFor(PageReport page) {
        int number = page.facts().page();
        return !patterns.isEmpty() && faults.values().stream().noneMatch(f -> f.contains(number));
    }

    /** Takes in any page that is asked for and does not stay as it is; null where its content could not be read whole. */
    public void page(PageReport page, @Nullable List<Painted> painted) {
        int number = page.facts().page();
        if (painted == null || !asksFor(page)) {
            return;
        }
        PageLayout layout = layout(page, painted);
        Set<Integer> own = near.getOrDefault(number, Set.of());
        List<Painted> seeds = layout.content().stream()
                .filter(p ->
                        own.contains(p.number()) || patterns.stream().anyMatch(pattern -> meets(pattern.box, p.box())))
                .toList();
        List<Rectangle2D> moved = new ArrayList<>();
        Set<Integer> done = new HashSet<>();
        for (Painted seed : seeds) {
            if (done.contains(seed.number())) {
                continue;
            }
            layout.groups(List.of(seed)).map(groups -> groups.get(0)).ifPresent(group -> {
                done.addAll(group.numbers());
                boolean isNear = group.numbers().stream().anyMatch(own::contains);
                layout.zone(group)
                        .filter(zone -> isAlike(layout, zone, group, number) || isNear)
                        .ifPresent(zone -> place(page, layout, zone, group, isNear, moved));
            });
        }
    }

    private boolean isAlike(PageLayout layout, Zone zone, Group group, int page) {
        List<Pattern> alike = patterns.stream()
                .filter(p -> p.zone == zone && layout.aligned(p.box, p.edge, group.box()))
                .toList();
        alike.forEach(p -> p.pages.add(page));
        if (zone == Zone.SIDE || layout.isFarther(group)) {
            alike.forEach(p -> p.farther.add(page));
        }
        return !alike.isEmpty();
    }

    private void place(
            PageReport page, PageLayout layout, Zone zone, Group group, boolean isNear, List<Rectangle2D> moved) {
        int number = page.facts().page();
        Need need = needs.get(zone);
        if (need == null) {
            return;
        }
        if (group.fixed()) {
            fault(LoneFault.HELD, number);
        } else if (layout.outerMm(group.box()) - need.mm
                < Math.min(settings.outerMargin().mm(), layout.outerMm(group.box()) - SLACK_MM) - SLACK_MM) {
            fault(LoneFault.EDGE, number);
        } else if (!layout.hasRoom(group, need.mm, moved)) {
            fault(LoneFault.COLLIDES, number);
        } else {
            moved.add(PageLayout.moved(group.box(), need.mm));
            moves.add(new LoneMove(
                    number, page.place().bindingEdge(), zone, group.numbers(), group.box(), need.mm, isNear));
        }
    }

    /** The plan of the pages that were taken in. */
    public LonePlan plan() {
        int few = Math.min(pages, HEADS);
        for (Pattern p : patterns) {
            int least = p.zone == Zone.SIDE ? Math.min(pages, SIDES) : few;
            if (p.pages.size() < least) {
                p.near.forEach(page -> fault(LoneFault.ALONE, page));
            } else if (2 * p.farther.size() < p.pages.size()) {
                p.near.forEach(page -> fault(LoneFault.TEXT, page)); // lines of text set wide
            }
        }
        Map<Integer, Long> sides = new LinkedHashMap<>();
        moves.stream().filter(m -> m.zone() == Zone.SIDE).forEach(m -> sides.merge(m.page(), 1L, Long::sum));
        sides.forEach((page, n) -> {
            if (n > MOST_SIDES) {
                fault(LoneFault.TEXT, page);
            }
        });
        if (!faults.isEmpty()) {
            return refused();
        }
        List<String> because = new ArrayList<>();
        needs.forEach((zone, need) -> because.add(LoneWords.because(zone, need.page, need.mark, clearMm, measures)));
        return new LonePlan(moves, because, LoneWords.notes(moves), Refusal.NONE);
    }

    private LonePlan refused() {
        List<String> reasons = new ArrayList<>();
        Set<Integer> blocking = new TreeSet<>();
        faults.forEach((fault, on) -> {
            reasons.add(fault.said(on));
            blocking.addAll(on);
        });
        reasons.add("Without only-hit all content moves instead.");
        MovePlanner.leaving(settings, blocking, pages).ifPresent(reasons::add);
        return new LonePlan(List.of(), List.of(), List.of(), Refusal.of(RefusalReason.NOT_ALONE, reasons));
    }

    private void fault(LoneFault fault, int page) {
        faults.computeIfAbsent(fault, k -> new TreeSet<>()).add(page);
    }

    private static PageLayout layout(PageReport page, List<Painted> painted) {
        PageEdge edge = page.place().bindingEdge();
        return new PageLayout(
                edge, page.facts().across(edge).mm(), page.facts().along(edge).mm(), painted);
    }

    private static Optional<Mark> mark(PageVerdict verdict, Rectangle2D box) {
        return verdict.hits().stream()
                .map(Hit::mark)
                .filter(m -> meets(m, box))
                .min(Comparator.comparingDouble(Mark::nearMm));
    }

    private static boolean meets(Mark mark, Rectangle2D box) {
        return box.getMinX() < mark.farMm() + FOUND_MM
                && box.getMaxX() > mark.nearMm() - FOUND_MM
                && box.getMinY() < mark.alongEndMm() + FOUND_MM
                && box.getMaxY() > mark.alongStartMm() - FOUND_MM;
    }

    private static boolean meets(Rectangle2D a, Rectangle2D b) {
        return b.getMinX() < a.getMaxX() + FOUND_MM
                && b.getMaxX() > a.getMinX() - FOUND_MM
                && b.getMinY() < a.getMaxY() + FOUND_MM
                && b.getMaxY() > a.getMinY() - FOUND_MM;
    }
}
