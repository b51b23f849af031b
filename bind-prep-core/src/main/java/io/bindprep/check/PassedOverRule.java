package io.bindprep.check;

import io.bindprep.marks.PageVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** {@code content-fault}: faults in a page's content that every viewer passes over, so that something may be missing. */
final class PassedOverRule implements Rule {
    private static final int MOST_NAMED = 4;

    @Override
    public List<Finding> find(Situation s) {
        List<Integer> pages = new ArrayList<>();
        TreeSet<String> faults = new TreeSet<>();
        for (PageVerdict v : s.verdicts()) {
            if (!v.basics().passedOver().isEmpty()) {
                pages.add(v.page());
                faults.addAll(v.basics().passedOver());
            }
        }
        if (pages.isEmpty()) {
            return List.of();
        }
        int more = faults.size() - MOST_NAMED;
        return List.of(Say.onPages(
                "content-fault",
                Severity.WARNING,
                pages,
                Say.pages(pages.size()) + " with faults in the content that viewers pass over: "
                        + String.join(
                                ", ",
                                faults.stream()
                                        .limit(MOST_NAMED)
                                        .map(Say::quote)
                                        .toList())
                        + (more > 0 ? " and " + more + " more" : "")
                        + ". The pages are judged as viewers show them.",
                "Compare the pages with the client's proof, or ask for a fresh export."));
    }
}
