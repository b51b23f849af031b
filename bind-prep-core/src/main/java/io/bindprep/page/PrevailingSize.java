package io.bindprep.page;

import io.bindprep.unit.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The trimmed size that most pages have, width and height as the reader sees them. */
public record PrevailingSize(Length width, Length height) {
    /** XJDF 2.2, Appendix C: sizes within 5 pt are equal; half of it either way from a common value. */
    private static final Length BUCKET = Length.ofPoints(2.5);

    /** The commonest size; of two equally common ones, the one that comes first. */
    public static PrevailingSize of(List<PageFacts> pages) {
        Map<List<Long>, Integer> counts = new LinkedHashMap<>();
        Map<List<Long>, PageFacts> first = new LinkedHashMap<>();
        for (PageFacts page : pages) {
            List<Long> key = List.of(bucket(page.trimWidth()), bucket(page.trimHeight()));
            counts.merge(key, 1, Integer::sum);
            first.putIfAbsent(key, page);
        }
        List<Long> best = List.of();
        int most = 0;
        for (Map.Entry<List<Long>, Integer> e : counts.entrySet()) {
            if (e.getValue() > most) {
                most = e.getValue();
                best = e.getKey();
            }
        }
        PageFacts page = first.get(best);
        if (page == null) {
            throw new IllegalArgumentException("a document without pages has no size");
        }
        return new PrevailingSize(page.trimWidth(), page.trimHeight());
    }

    private static long bucket(Length length) {
        return Math.round(length.units() / (double) BUCKET.units());
    }
}
