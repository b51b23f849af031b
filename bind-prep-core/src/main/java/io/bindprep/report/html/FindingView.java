package io.bindprep.report.html;

import io.bindprep.check.Finding;
import io.bindprep.report.words.RecheckWords;
import java.util.List;
import java.util.Set;

/**
 * A finding as it is shown.
 *
 * @param severity "error", "warning", "note", or "accepted" where somebody lets it pass
 * @param pages empty for the whole document
 * @param plural whether those are several pages
 * @param accepted who lets it pass and why; empty where nobody does
 * @param since what became of it since an earlier check; empty where none was compared with
 */
public record FindingView(
        String severity,
        String rule,
        List<PageLink> pages,
        boolean plural,
        String message,
        String remedy,
        String accepted,
        String since) {
    static FindingView of(Finding f, Set<Integer> shown) {
        Finding.Accepted by = f.accepted();
        return new FindingView(
                by == null ? Texts.lower(f.severity()) : "accepted",
                f.rule(),
                PageLink.of(f.pages(), shown),
                f.pages().size() > 1,
                Texts.clean(f.message()),
                Texts.clean(f.remedy()),
                by == null ? "" : Texts.clean("Accepted by " + by.who() + ": " + by.reason()),
                Texts.clean(RecheckWords.of(f)));
    }
}
