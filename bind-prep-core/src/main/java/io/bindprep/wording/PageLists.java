package io.bindprep.wording;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Page numbers as people write them. */
public final class PageLists {
    /** Fewer are read as quickly one by one. */
    private static final int LEAST_ALTERNATE = 4;

    private PageLists() {}

    private static boolean alternate(List<Integer> pages) {
        for (int i = 1; i < pages.size(); i++) {
            if (pages.get(i) != pages.get(i - 1) + 2) {
                return false;
            }
        }
        return true;
    }

    /** Ascending numbers with their noun: "page 44", "pages 3-40, 44". */
    public static String named(Collection<Integer> pages) {
        return named(pages, Integer.MAX_VALUE);
    }

    /** The same in at most so many ranges, as {@link #compact(List, int)}. */
    public static String named(Collection<Integer> pages, int mostRanges) {
        return (pages.size() == 1 ? "page " : "pages ") + compact(List.copyOf(pages), mostRanges);
    }

    /** Ascending numbers as "3-40, 44"; empty text for none. */
    public static String compact(List<Integer> pages) {
        return compact(pages, Integer.MAX_VALUE);
    }

    /**
     * Ascending numbers as at most so many ranges, the pages beyond counted: "3-40, 44 and 12 more"; where they are all the
     * odd or even ones of a stretch, "3-41, odd ones".
     */
    public static String compact(List<Integer> pages, int mostRanges) {
        if (mostRanges < Integer.MAX_VALUE && pages.size() >= LEAST_ALTERNATE && alternate(pages)) {
            return pages.get(0) + "-" + pages.get(pages.size() - 1)
                    + (pages.get(0) % 2 == 0 ? ", even ones" : ", odd ones");
        }
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
