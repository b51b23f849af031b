package io.bindprep.repair;

import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Painted;
import io.bindprep.page.PageEdge;
import io.bindprep.repair.LoneMove.Zone;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Layout of one page: which of the things that it paints belong together, and which of those stand apart from the text as
 * page numbers, running heads and thumb indexes do. Rows run across the page as its reader sees it.
 *
 * <p>Every distance here is our own choice: nearer than that, an eye takes two things for one.
 */
final class PageLayout {
    private static final double ROWS_APART_MM = 2;
    private static final double WORDS_APART_MM = 4;
    private static final double SLACK_MM = 0.2;
    private static final double ALIGNED_MM = 0.5;
    private static final double MOST_ROW_MM = 12;
    private static final double MOST_SIDE_ROW_MM = 30;
    private static final double MOST_SIDE_MM = 15;
    /** Heads stand this much farther from the text than its own lines do from each other. */
    private static final double WIDER = 1.25;
    /** Part of a page's height in which a head or foot stands. */
    private static final double OUTER_PART = 0.2;

    private static final double KEEPS_MM = 1.5;
    private static final double TINT_MM = 3;
    private static final double TOUCHING_MM = 0.5;

    private final PageEdge edge;
    private final double across;
    private final double along;
    private final List<Painted> content = new ArrayList<>();
    private final List<Painted> grounds = new ArrayList<>();

    PageLayout(PageEdge edge, double across, double along, List<Painted> painted) {
        this.edge = edge;
        this.across = across;
        this.along = along;
        Rectangle2D trim = new Rectangle2D.Double(0, 0, across, along);
        painted.stream()
                .filter(p -> p.prints() && p.box().intersects(trim))
                .forEach(p -> (isGround(p) ? grounds : content).add(p));
    }

    /** A group of things that belong together. */
    record Group(List<Painted> things, Rectangle2D box) {
        boolean fixed() {
            return things.stream().anyMatch(Painted::fixed);
        }

        Set<Integer> numbers() {
            return things.stream().map(Painted::number).collect(Collectors.toSet());
        }
    }

    PageEdge edge() {
        return edge;
    }

    List<Painted> content() {
        return content;
    }

    /** Broad tints and pictures on which other things stand. */
    private boolean isGround(Painted p) {
        double w = p.box().getWidth();
        double h = p.box().getHeight();
        return (p.kind() == MarkKind.ART || p.kind() == MarkKind.IMAGE)
                && w >= TINT_MM
                && h >= TINT_MM
                && (p.box().getMinX() <= TOUCHING_MM || w >= 0.8 * across || w * h >= across * along / 4);
    }

    private double rowStart(Rectangle2D box) {
        return edge.upright() ? box.getMinY() : box.getMinX();
    }

    private double rowEnd(Rectangle2D box) {
        return edge.upright() ? box.getMaxY() : box.getMaxX();
    }

    private double rowExtent(Rectangle2D box) {
        return rowEnd(box) - rowStart(box);
    }

    private double rowsApart(Rectangle2D a, Rectangle2D b) {
        return Math.max(rowStart(a) - rowEnd(b), rowStart(b) - rowEnd(a));
    }

    private double wordsApart(Rectangle2D a, Rectangle2D b) {
        return edge.upright()
                ? Math.max(a.getMinX() - b.getMaxX(), b.getMinX() - a.getMaxX())
                : Math.max(a.getMinY() - b.getMaxY(), b.getMinY() - a.getMaxY());
    }

    /**
     * Returns true if two boxes share a row and begin alike in it or, on pages bound at the same edge, end or are centred
     * alike: a title of one length on a front and another on a back may end alike by chance.
     */
    boolean aligned(Rectangle2D a, PageEdge edgeOfA, Rectangle2D b) {
        if (-rowsApart(a, b) < Math.min(rowExtent(a), rowExtent(b)) / 2) {
            return false;
        }
        boolean upright = edge.upright();
        double start = upright ? a.getMinX() - b.getMinX() : a.getMinY() - b.getMinY();
        double end = upright ? a.getMaxX() - b.getMaxX() : a.getMaxY() - b.getMaxY();
        return Math.abs(start) <= ALIGNED_MM
                || edgeOfA == edge && Math.min(Math.abs(end), Math.abs(start + end) / 2) <= ALIGNED_MM;
    }

    /** Groups round these things; empty where one of them goes on as text does. */
    Optional<List<Group>> groups(Collection<Painted> seeds) {
        List<Group> groups = new ArrayList<>();
        Set<Integer> taken = new HashSet<>();
        for (Painted seed : seeds) {
            if (!taken.contains(seed.number())) {
                Group group = group(seed);
                if (rowExtent(group.box) > MOST_SIDE_ROW_MM) {
                    return Optional.empty();
                }
                taken.addAll(group.numbers());
                groups.add(group);
            }
        }
        return Optional.of(groups);
    }

    private Group group(Painted seed) {
        List<Painted> things = new ArrayList<>(List.of(seed));
        Set<Integer> in = new HashSet<>(Set.of(seed.number()));
        Rectangle2D box = (Rectangle2D) seed.box().clone();
        boolean grew = true;
        while (grew && rowExtent(box) <= MOST_SIDE_ROW_MM) {
            grew = false;
            for (Painted p : content) {
                if (!in.contains(p.number())
                        && !frames(p, box)
                        && things.stream().anyMatch(t -> joins(t.box(), p.box()))) {
                    in.add(p.number());
                    things.add(p);
                    box.add(p.box());
                    grew = true;
                }
            }
        }
        return new Group(things, box);
    }

    private boolean joins(Rectangle2D a, Rectangle2D b) {
        return rowsApart(a, b) < ROWS_APART_MM && wordsApart(a, b) < WORDS_APART_MM;
    }

    /** A frame round a page, or lines drawn in one stroke at its head and foot. */
    private static boolean frames(Painted p, Rectangle2D box) {
        return p.kind() == MarkKind.LINE
                && p.box().getMinX() <= box.getMinX()
                && p.box().getMaxX() >= box.getMaxX()
                && p.box().getMinY() < box.getMinY() - TOUCHING_MM
                && p.box().getMaxY() > box.getMaxY() + TOUCHING_MM;
    }

    private Stream<Painted> others(Group group) {
        Set<Integer> own = group.numbers();
        return content.stream().filter(p -> !own.contains(p.number()) && !frames(p, group.box));
    }

    /** Place of a group that stands apart from the text; empty where it does not. */
    Optional<Zone> zone(Group group) {
        List<Rectangle2D> others = others(group).map(Painted::box).toList();
        double length = edge.upright() ? along : across;
        if (rowExtent(group.box) <= MOST_ROW_MM) {
            if (rowEnd(group.box) <= OUTER_PART * length && apart(others, group.box, false)) {
                return Optional.of(Zone.HEAD);
            }
            if (rowStart(group.box) >= (1 - OUTER_PART) * length && apart(others, group.box, true)) {
                return Optional.of(Zone.FOOT);
            }
        }
        boolean beside = edge.upright()
                && group.box.getWidth() <= MOST_SIDE_MM
                && others.stream()
                        .filter(o -> rowsApart(o, group.box) < TOUCHING_MM)
                        .allMatch(o -> o.getMinX() >= group.box.getMaxX() + ROWS_APART_MM);
        return beside ? Optional.of(Zone.SIDE) : Optional.empty();
    }

    /** Stretch of rows, from the head or, turned over, from the foot. */
    private record Rows(double start, double end) {}

    private Rows rows(Rectangle2D box, boolean turned) {
        return turned ? new Rows(-rowEnd(box), -rowStart(box)) : new Rows(rowStart(box), rowEnd(box));
    }

    /** Returns true if a head or foot stands farther from the text than the text's own lines do from each other. */
    boolean isFarther(Group group) {
        List<Rectangle2D> others = others(group).map(Painted::box).toList();
        boolean foot = rowStart(group.box) > (edge.upright() ? along : across) / 2;
        return gapTo(others, group.box, foot) >= WIDER * usualGap(others, group.box, foot);
    }

    private boolean apart(List<Rectangle2D> others, Rectangle2D box, boolean turned) {
        return gapTo(others, box, turned) >= ROWS_APART_MM;
    }

    /** Gap from the row of a box to the text; negative where the text goes on beside or beyond it. */
    private double gapTo(List<Rectangle2D> others, Rectangle2D box, boolean turned) {
        Rows own = rows(box, turned);
        double limit = own.end;
        double next = Double.POSITIVE_INFINITY;
        for (Rectangle2D other : others) {
            Rows r = rows(other, turned);
            if (r.start >= own.end - SLACK_MM) {
                next = Math.min(next, r.start);
            } else if (r.end <= own.start + SLACK_MM || r.end - r.start > MOST_ROW_MM) {
                return -1;
            } else {
                limit = Math.max(limit, r.end);
            }
        }
        return next - limit;
    }

    private double usualGap(List<Rectangle2D> others, Rectangle2D box, boolean turned) {
        double from = rows(box, turned).end - SLACK_MM;
        List<Rows> rest = others.stream()
                .map(o -> rows(o, turned))
                .filter(r -> r.start >= from)
                .sorted(Comparator.comparingDouble(Rows::start))
                .toList();
        List<Double> gaps = new ArrayList<>();
        double end = Double.POSITIVE_INFINITY;
        for (Rows r : rest) {
            if (r.start > end + SLACK_MM) {
                gaps.add(r.start - end);
            }
            end = end == Double.POSITIVE_INFINITY ? r.end : Math.max(end, r.end);
        }
        gaps.sort(null);
        return gaps.size() < 2 ? 0 : gaps.get(gaps.size() / 2);
    }

    /** Returns true if nothing stands where a group is to go, and it keeps to the ground that it stands on. */
    boolean hasRoom(Group group, double away, List<Rectangle2D> moved) {
        Rectangle2D was = group.box;
        Rectangle2D is = moved(was, away);
        boolean free = others(group)
                .map(Painted::box)
                .noneMatch(o -> is.intersects(o) && !was.intersects(o)
                        || grown(is).intersects(o) && !grown(was).intersects(o));
        boolean framed = content.stream()
                .filter(p -> frames(p, was))
                .allMatch(p -> p.box().getMaxX() >= is.getMaxX() + TOUCHING_MM);
        boolean onGround = grounds.stream()
                .map(Painted::box)
                .allMatch(g -> g.contains(was) == g.contains(is) && g.intersects(was) == g.intersects(is));
        return free && framed && onGround && moved.stream().noneMatch(is::intersects);
    }

    static Rectangle2D moved(Rectangle2D box, double away) {
        return new Rectangle2D.Double(box.getX() + away, box.getY(), box.getWidth(), box.getHeight());
    }

    private static Rectangle2D grown(Rectangle2D box) {
        return new Rectangle2D.Double(
                box.getX() - KEEPS_MM,
                box.getY() - KEEPS_MM,
                box.getWidth() + 2 * KEEPS_MM,
                box.getHeight() + 2 * KEEPS_MM);
    }

    /** Room between a box and the outer edge. */
    double outerMm(Rectangle2D box) {
        return across - box.getMaxX();
    }
}
