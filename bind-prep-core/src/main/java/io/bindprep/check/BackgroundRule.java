package io.bindprep.check;

import io.bindprep.marks.PageVerdict;
import java.util.List;

/** {@code background-at-binding-edge}: a tint or picture that runs through the binding. */
final class BackgroundRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<Integer> pages = s.verdicts().stream()
                .filter(PageVerdict::background)
                .map(PageVerdict::page)
                .toList();
        if (pages.isEmpty()) {
            return List.of();
        }
        return List.of(Say.onPages(
                "background-at-binding-edge",
                Severity.NOTE,
                pages,
                "A tint or picture runs through the binding edge on " + Say.pages(pages.size())
                        + ". The holes will cut it.",
                "A plain tint is harmless. Look at pages where a face, lettering or other detail lies there."));
    }
}
