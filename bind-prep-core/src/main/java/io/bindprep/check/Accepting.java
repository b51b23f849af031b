package io.bindprep.check;

import io.bindprep.job.Acceptance;
import io.bindprep.marks.PageVerdict;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets pass what a job accepts: {@code acceptance-unmet} where an acceptance meets nothing. A page that was not read is
 * never let pass, as nobody can have seen what is on it.
 */
final class Accepting {
    static final String ID = "acceptance-unmet";

    private Accepting() {}

    /** The findings with those marked that the job accepts, and a warning for each acceptance that meets none. */
    static List<Finding> of(List<Acceptance> acceptances, List<Finding> findings, List<PageVerdict> verdicts) {
        if (acceptances.isEmpty()) {
            return findings;
        }
        Set<Acceptance> unmet = new LinkedHashSet<>(acceptances);
        List<Finding> all = new ArrayList<>();
        for (Finding finding : findings) {
            Acceptance met = met(finding, acceptances, verdicts);
            unmet.remove(met);
            all.add(met == null ? finding : finding.accepted(new Finding.Accepted(met.reason(), met.who())));
        }
        unmet.forEach(acceptance -> all.add(unmet(acceptance, findings)));
        return all;
    }

    /** Returns true if a job may accept such a finding. */
    static boolean acceptable(Finding finding) {
        return !finding.rule().equals(UncheckedRule.ID) && !finding.rule().equals(ID);
    }

    private static @Nullable Acceptance met(Finding finding, List<Acceptance> acceptances, List<PageVerdict> verdicts) {
        if (!acceptable(finding)) {
            return null;
        }
        String seen = Fingerprint.of(finding, verdicts);
        return acceptances.stream()
                .filter(a -> a.finding().equals(finding.rule()) && a.seen().equals(seen))
                .findFirst()
                .orElse(null);
    }

    private static Finding unmet(Acceptance a, List<Finding> findings) {
        boolean several = a.pages().indexOf(',') >= 0 || a.pages().indexOf('-') >= 0;
        String name = a.finding() + (a.pages().isEmpty() ? "" : (several ? ", pages " : ", page ") + a.pages());
        boolean there = findings.stream()
                .anyMatch(f -> f.rule().equals(a.finding())
                        && (a.pages().isEmpty() || PageLists.compact(f.pages()).equals(a.pages())));
        String message = a.finding().equals(UncheckedRule.ID)
                ? "A page that could not be read cannot be accepted: " + name + "."
                : there
                        ? "A finding is no longer what " + Say.quote(a.who()) + " accepted: " + name + "."
                        : "An acceptance meets no finding: " + name + ", accepted by " + Say.quote(a.who()) + ".";
        return Say.document(
                ID,
                Severity.WARNING,
                message,
                there
                        ? "Look at the finding again. Accept it anew, or have it mended; then remove the old entry (accept)."
                        : "Remove the entry from the job, or correct its pages and what was seen (accept).");
    }
}
