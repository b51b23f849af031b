package io.bindprep.check;

import io.bindprep.page.PageFacts;
import java.util.List;

/** {@code trim-outside-bleed}: a TrimBox that reaches beyond its BleedBox (ISO 32000-1:2008, 14.11.2.1). */
final class TrimBoxRule implements Rule {
    /** Boxes written in whole or tenth points. */
    private static final double SLACK_UNITS = 0.1;

    @Override
    public List<Finding> find(Situation s) {
        List<Integer> pages = s.document().pages().stream()
                .filter(p -> p.trimDeclared() && !p.bleed().contains(p.trim(), SLACK_UNITS))
                .map(PageFacts::page)
                .toList();
        if (pages.isEmpty()) {
            return List.of();
        }
        return List.of(Say.onPages(
                "trim-outside-bleed",
                Severity.WARNING,
                pages,
                "The TrimBox extends beyond the BleedBox (or the visible page) on " + Say.pages(pages.size())
                        + ". Content at the edge may be missing.",
                "Ask for an export with correct page boxes."));
    }
}
