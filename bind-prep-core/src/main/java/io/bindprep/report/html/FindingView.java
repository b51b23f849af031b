package io.bindprep.report.html;

import io.bindprep.check.Finding;
import java.util.List;
import java.util.Set;

/**
 * A finding as it is shown.
 *
 * @param severity "error", "warning" or "note"
 * @param pages empty for the whole document
 * @param plural whether those are several pages
 */
public record FindingView(
        String severity, String rule, List<PageLink> pages, boolean plural, String message, String remedy) {
    static FindingView of(Finding f, Set<Integer> shown) {
        return new FindingView(
                Texts.lower(f.severity()),
                f.rule(),
                PageLink.of(f.pages(), shown),
                f.pages().size() > 1,
                Texts.clean(f.message()),
                Texts.clean(f.remedy()));
    }
}
