package io.bindprep.marks;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One page's verdict.
 *
 * @param nearest the non-background mark nearest the binding edge within the strip; null where there is none
 * @param hits what makes the page tight or punched, worst kind first, at most {@value #MOST_HITS}
 * @param background whether a tint or picture runs through the binding edge
 * @param unchecked why the page could not be analysed whole; null where it was
 * @param basics what else was seen of the page
 */
public record PageVerdict(
        int page,
        Verdict verdict,
        @Nullable Mark nearest,
        List<Hit> hits,
        boolean background,
        @Nullable String unchecked,
        PageBasics basics) {
    /** Number of hits kept of one page. */
    public static final int MOST_HITS = 20;

    /** The verdict alone. */
    public PageVerdict(
            int page,
            Verdict verdict,
            @Nullable Mark nearest,
            List<Hit> hits,
            boolean background,
            @Nullable String unchecked) {
        this(page, verdict, nearest, hits, background, unchecked, PageBasics.NONE);
    }

    public PageVerdict {
        hits = List.copyOf(hits);
    }

    // equality by hand: Java links a record's own at its first call, for ten records a tenth of a small check
    @Override
    public boolean equals(@Nullable Object o) {
        return o instanceof PageVerdict other
                && page == other.page
                && verdict == other.verdict
                && Objects.equals(nearest, other.nearest)
                && hits.equals(other.hits)
                && background == other.background
                && Objects.equals(unchecked, other.unchecked)
                && basics.equals(other.basics);
    }

    @Override
    public int hashCode() {
        return Objects.hash(page, verdict, nearest, hits, background, unchecked, basics);
    }
}
