package io.bindprep.check;

import java.util.ArrayList;
import java.util.List;

/** Page numbers as people write them. */
public final class PageRanges {
    private PageRanges() {}

    /** Ascending numbers as "3-40, 44"; empty text for none. */
    public static String compact(List<Integer> pages) {
        return compact(pages, Integer.MAX_VALUE);
    }

    /** Ascending numbers as at most so many ranges, the pages beyond counted: "3-40, 44 and 12 more". */
    public static String compact(List<Integer> pages, int mostRanges) {
        List<String> ranges = new ArrayList<>();
        int i = 0;
        while (i < pages.size() && ranges.size() < mostRanges) {
            int first = pages.get(i);
            int last = first;
            while (i + 1 < pages.size() && pages.get(i + 1) == last + 1) {
                last++;
                i++;
            }
            i++;
            ranges.add(first == last ? Integer.toString(first) : first + "-" + last);
        }
        String text = String.join(", ", ranges);
        return i < pages.size() ? text + " and " + (pages.size() - i) + " more" : text;
    }
}
