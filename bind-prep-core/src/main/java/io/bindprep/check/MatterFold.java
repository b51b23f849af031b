package io.bindprep.check;

import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Verdict;
import io.bindprep.wording.Printable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Pages where marks of one kind come to the same end, with the mark nearest the binding edge among them. What stands alike
 * on several pages, a running head or a rule, is a fold of its own; all the rest is one.
 */
final class MatterFold {
    /** On so many pages it is no chance. */
    private static final int LEAST_ALIKE = 3;

    /** More folds of a kind would bury the others. */
    private static final int MOST_ALIKE = 5;

    private final boolean alike;
    private final List<Integer> pages = new ArrayList<>();
    private final List<Hit> worstOfPages = new ArrayList<>();
    private @Nullable Hit worst;
    private int worstPage;

    private MatterFold(boolean alike) {
        this.alike = alike;
    }

    /** Of one kind and verdict, those alike on most pages first, then the rest; a page counts by its worse verdict. */
    static List<MatterFold> of(List<PageVerdict> verdicts, MarkKind kind, Verdict verdict) {
        Map<String, MatterFold> groups = new LinkedHashMap<>();
        verdicts.forEach(page -> hits(page, kind, verdict)
                .forEach(hit -> groups.computeIfAbsent(likeness(hit.mark()), k -> new MatterFold(true))
                        .add(page.page(), hit)));
        List<MatterFold> folds = new ArrayList<>(groups.values().stream()
                .filter(g -> g.pages.size() >= LEAST_ALIKE)
                .sorted(Comparator.comparingInt(g -> -g.pages.size()))
                .limit(MOST_ALIKE)
                .toList());
        MatterFold rest = new MatterFold(false);
        verdicts.forEach(page -> hits(page, kind, verdict).stream()
                .filter(hit -> !folds.contains(groups.get(likeness(hit.mark()))))
                .forEach(hit -> rest.add(page.page(), hit)));
        if (!rest.pages.isEmpty()) {
            folds.add(rest);
        }
        return folds;
    }

    private static List<Hit> hits(PageVerdict page, MarkKind kind, Verdict verdict) {
        List<Hit> ofKind =
                page.hits().stream().filter(h -> h.mark().kind() == kind).toList();
        boolean hit = ofKind.stream().anyMatch(h -> h.verdict() == Verdict.HIT);
        Verdict worse = hit ? Verdict.HIT : Verdict.TIGHT;
        return worse == verdict
                ? ofKind.stream().filter(h -> h.verdict() == verdict).toList()
                : List.of();
    }

    /** Words but for their numbers, as page numbers count up; without words the place to a millimetre. */
    private static String likeness(Mark m) {
        return m.words().isBlank()
                ? Math.round(m.nearMm()) + " " + Math.round(m.alongStartMm()) + " " + Math.round(m.alongEndMm())
                : m.words().replaceAll("[0-9]+", "0");
    }

    private void add(int page, Hit hit) {
        if (pages.isEmpty() || pages.get(pages.size() - 1) != page) {
            pages.add(page);
            worstOfPages.add(hit);
        }
        int last = pages.size() - 1;
        if (hit.mark().nearMm() < worstOfPages.get(last).mark().nearMm()) {
            worstOfPages.set(last, hit);
        }
        if (worst == null || hit.mark().nearMm() < worst.mark().nearMm()) {
            worst = hit;
            worstPage = page;
        }
    }

    /** Returns true if it is the same words, or in the same place, on each of its pages. */
    boolean alike() {
        return alike;
    }

    List<Integer> pages() {
        return pages;
    }

    /** The mark nearest the binding edge on each page, in the order of the pages. */
    List<Finding.Place> places() {
        return IntStream.range(0, pages.size())
                .mapToObj(i -> place(pages.get(i), worstOfPages.get(i).mark()))
                .toList();
    }

    private static Finding.Place place(int page, Mark m) {
        return new Finding.Place(page, m.nearMm(), m.alongStartMm(), m.alongEndMm(), Printable.line(m.words()));
    }

    Hit worst() {
        return Objects.requireNonNull(worst);
    }

    int worstPage() {
        return worstPage;
    }
}
