package io.bindprep.check;

import io.bindprep.marks.PageVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** {@code font-not-embedded}: text whose font is not in the file, so that another may be printed in its place. */
final class FontRule implements Rule {
    private static final int MOST_NAMED = 6;

    @Override
    public List<Finding> find(Situation s) {
        List<Integer> pages = new ArrayList<>();
        TreeSet<String> names = new TreeSet<>();
        for (PageVerdict v : s.verdicts()) {
            List<String> missing = v.basics().fontsMissing();
            if (!missing.isEmpty()) {
                pages.add(v.page());
                names.addAll(missing);
            }
        }
        if (pages.isEmpty()) {
            return List.of();
        }
        String named = String.join(
                ", ", names.stream().limit(MOST_NAMED).map(Say::quote).toList());
        int more = names.size() - MOST_NAMED;
        return List.of(Say.onPages(
                "font-not-embedded",
                Severity.WARNING,
                pages,
                (names.size() == 1 ? "1 font" : names.size() + " fonts") + " used on " + Say.pages(pages.size())
                        + (names.size() == 1 ? " is" : " are") + " not in the file, or not readable there: " + named
                        + (more > 0 ? " and " + more + " more" : "")
                        + ". The printer may replace them, and the ends of their text are estimated.",
                "Ask for an export with all fonts embedded."));
    }
}
