package io.bindprep.picture;

import io.bindprep.marks.Hit;
import io.bindprep.marks.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Chooses which stretches of a binding edge to enlarge: those with the worst hits. */
public final class CloseUpWindows {
    /** So long that a close-up of 24 mm depth still fits a screen beside its page. */
    private static final double LENGTH = 44;

    /** Paper shown before and after a hit. */
    private static final double AROUND = 6;

    private static final int MOST = 3;

    private CloseUpWindows() {}

    /** A hit's place that must be seen: its middle, or where a long mark begins to be hit. */
    private record Anchor(double at, boolean hit) {}

    /**
     * At most three stretches in order along the edge, each within it.
     *
     * @param hits what to show; of a mark longer than a stretch its beginning
     * @param edgeMm length of the page's binding edge, millimetres
     */
    public static List<CloseUpWindow> of(List<Hit> hits, double edgeMm) {
        List<List<Anchor>> groups = new ArrayList<>();
        for (Anchor anchor : anchors(hits)) {
            List<Anchor> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            if (last.isEmpty() || anchor.at - last.get(0).at > LENGTH - 2 * AROUND) {
                groups.add(new ArrayList<>(List.of(anchor)));
            } else {
                last.add(anchor);
            }
        }
        return groups.stream()
                // stable: of equally bad ones the first along the edge
                .sorted(Comparator.comparingLong(CloseUpWindows::hit)
                        .thenComparingInt(List::size)
                        .reversed())
                .limit(MOST)
                .map(group -> around(group, edgeMm))
                .sorted(Comparator.comparingDouble(CloseUpWindow::startMm))
                .toList();
    }

    private static List<Anchor> anchors(List<Hit> hits) {
        return hits.stream()
                .map(hit -> {
                    double start = hit.mark().alongStartMm();
                    double half = (hit.mark().alongEndMm() - start) / 2;
                    return new Anchor(start + Math.min(half, LENGTH / 2 - AROUND), hit.verdict() == Verdict.HIT);
                })
                .sorted(Comparator.comparingDouble(Anchor::at))
                .toList();
    }

    private static long hit(List<Anchor> group) {
        return group.stream().filter(Anchor::hit).count();
    }

    private static CloseUpWindow around(List<Anchor> group, double edgeMm) {
        double middle = (group.get(0).at + group.get(group.size() - 1).at) / 2;
        double length = Math.min(LENGTH, edgeMm);
        double start = Math.max(0, Math.min(middle - length / 2, edgeMm - length));
        return new CloseUpWindow(start, start + length);
    }
}
