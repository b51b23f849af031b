package io.bindprep.check;

import io.bindprep.page.PageFacts;
import java.util.List;

/** {@code trim-undeclared}: the page does not say where it will be cut (ISO 32000-1:2008, 14.11.2: TrimBox). */
final class TrimDeclaredRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<Integer> pages = s.document().pages().stream()
                .filter(p -> !p.trimDeclared())
                .map(PageFacts::page)
                .toList();
        if (pages.isEmpty()) {
            return List.of();
        }
        return List.of(Say.onPages(
                "trim-undeclared",
                Severity.NOTE,
                pages,
                Say.pages(pages.size()) + " without a TrimBox. The visible page is taken as the trimmed leaf.",
                "This is fine for a PDF without bleed and crop marks. Otherwise ask for an export with its TrimBox."));
    }
}
