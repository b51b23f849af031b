package io.bindprep.check;

import io.bindprep.marks.PageVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** {@code appearance-missing}: form fields and annotations that print as the viewer likes, for the file does not say how. */
final class AppearanceRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<Integer> pages = new ArrayList<>();
        TreeSet<String> kinds = new TreeSet<>();
        for (PageVerdict v : s.verdicts()) {
            List<String> missing = v.basics().withoutAppearance();
            if (!missing.isEmpty()) {
                pages.add(v.page());
                kinds.addAll(missing);
            }
        }
        if (pages.isEmpty()) {
            return List.of();
        }
        return List.of(
                Say.onPages(
                        "appearance-missing",
                        Severity.WARNING,
                        pages,
                        Say.pages(pages.size()) + " with annotations that have no appearance: "
                                + String.join(", ", kinds)
                                + ". What prints depends on the viewer; their place is estimated.",
                        "Ask for an export with forms and comments flattened, or print a proof from the program that will print the job."));
    }
}
