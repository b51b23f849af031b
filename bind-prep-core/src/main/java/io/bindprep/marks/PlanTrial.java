package io.bindprep.marks;

import io.bindprep.binding.PageCount;
import io.bindprep.binding.Plan;
import io.bindprep.block.PagePlace;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Holds each page, once scanned, against every way to punch that is weighed, so that one scan answers them all.
 *
 * <p>For plans that may be chosen whole verdicts are kept, of the others only which pages are hit or tight. Different
 * pages may be judged on different threads.
 */
public final class PlanTrial {
    private final List<PageJudge> judges;
    private final double stripMm;
    private final double reachMm;
    private final @Nullable PageVerdict[][] whole;
    private final Verdict[][] others;

    /**
     * A trial.
     *
     * @param choices plans of which one will be chosen
     * @param others plans only to compare with
     * @param pages how many pages there are
     */
    public PlanTrial(List<Plan> choices, List<Plan> others, int pages) {
        this.judges = Stream.concat(choices.stream(), others.stream())
                .map(PageJudge::new)
                .toList();
        this.stripMm = judges.stream().mapToDouble(PageJudge::stripMm).max().orElseThrow();
        this.reachMm = judges.stream().mapToDouble(PageJudge::reachMm).max().orElseThrow();
        this.whole = new PageVerdict[choices.size()][pages];
        this.others = new Verdict[others.size()][pages];
    }

    /** Depth from the binding edge in which marks are needed, millimetres: as far as any of the plans asks for. */
    public double stripMm() {
        return stripMm;
    }

    /** Distance from the binding edge from which a mark is out of reach of every plan, millimetres. */
    public double reachMm() {
        return reachMm;
    }

    /**
     * Judges a page.
     *
     * @param edgeLengthMm length of the page's own binding edge, millimetres
     */
    public void judge(PageMarks page, PagePlace place, double edgeLengthMm) {
        int at = page.page() - 1;
        PageVerdict before = null;
        for (int i = 0; i < judges.size(); i++) {
            PageVerdict verdict = judges.get(i).judge(page, place, edgeLengthMm);
            if (i < whole.length) {
                // most pages are alike at every depth: kept once, thousands of pages stay small
                before = verdict.equals(before) ? before : verdict;
                whole[i][at] = before;
            } else {
                others[i - whole.length][at] = verdict.verdict();
            }
        }
    }

    /** The verdicts of one of the choices, every page in order. */
    public List<PageVerdict> verdicts(int choice) {
        return Arrays.stream(whole[choice]).map(PlanTrial::judged).toList();
    }

    /** The pages of one verdict under one of the plans, the choices before the others. */
    public List<Integer> pages(int plan, Verdict verdict) {
        return IntStream.range(0, whole[0].length)
                .filter(page -> verdict(plan, page) == verdict)
                .mapToObj(page -> page + 1)
                .toList();
    }

    /** Page counts of each of the choices, in their order. */
    public List<PageCount> choiceCounts() {
        return IntStream.range(0, whole.length)
                .mapToObj(plan -> new PageCount(
                        pages(plan, Verdict.HIT).size(),
                        pages(plan, Verdict.TIGHT).size(),
                        pages(plan, Verdict.UNCHECKED).size()))
                .toList();
    }

    private Verdict verdict(int plan, int page) {
        return plan < whole.length ? judged(whole[plan][page]).verdict() : others[plan - whole.length][page];
    }

    private static PageVerdict judged(@Nullable PageVerdict verdict) {
        if (verdict == null) {
            throw new IllegalStateException("a page was not looked at");
        }
        return verdict;
    }
}
