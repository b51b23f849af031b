package io.bindprep.report.html;

import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Pages as people write them, leading to their place in the report.
 *
 * @param text "14" or "40-44", or how many more there are
 * @param target id of the first of them that has a place; null where none has
 */
public record PageLink(String text, @Nullable String target) {
    private static final int MOST = 12;

    static String id(int page) {
        return "p" + page;
    }

    /** Ascending pages in ranges; beyond a dozen the rest is counted. */
    static List<PageLink> of(List<Integer> pages, Set<Integer> shown) {
        List<PageLink> links = new ArrayList<>();
        int i = 0;
        while (i < pages.size() && links.size() < MOST) {
            int from = i;
            while (i + 1 < pages.size() && pages.get(i + 1) == pages.get(i) + 1) {
                i++;
            }
            i++;
            List<Integer> range = pages.subList(from, i);
            String target = range.stream()
                    .filter(shown::contains)
                    .findFirst()
                    .map(PageLink::id)
                    .orElse(null);
            links.add(new PageLink(PageLists.compact(range), target));
        }
        if (i < pages.size()) {
            links.add(new PageLink("and " + (pages.size() - i) + " more", null));
        }
        return links;
    }
}
