package io.bindprep.report.words;

import io.bindprep.check.Finding;
import io.bindprep.check.Outcome;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.job.FailOn;
import io.bindprep.marks.Verdict;
import io.bindprep.wording.Counted;
import java.util.List;

/** The whole answer in one sentence. */
public final class VerdictSentence {
    private static final String PLAN_ONLY = "Plan only: no PDF was checked.";

    private VerdictSentence() {}

    /** "Do not print. The holes would cut content on 2 pages." */
    public static String of(Report r) {
        long hit = count(r, Verdict.HIT);
        long unchecked = count(r, Verdict.UNCHECKED);
        long errors = count(r, Severity.ERROR);
        long warnings = count(r, Severity.WARNING);
        String sentence;
        if (hit > 0) {
            sentence = "Do not print. The holes would cut content on " + Counted.of(hit, "page") + "."
                    + (unchecked > 0 ? " " + Counted.of(unchecked, "page") + " could not be checked." : "");
        } else if (unchecked > 0) {
            sentence = "Do not print yet. " + Counted.of(unchecked, "page") + " could not be checked.";
        } else if (errors > 0) {
            sentence = "Do not print. " + Counted.of(errors, "error") + " to resolve.";
        } else if (r.outcome() == Outcome.FINDINGS) {
            sentence =
                    "Do not print yet. " + Counted.of(warnings, "warning") + " to resolve; this job fails on warnings.";
        } else if (r.outcome() == Outcome.PLANNED) {
            sentence = PLAN_ONLY + (warnings == 0 ? "" : " " + Counted.of(warnings, "warning") + " to review.");
        } else if (warnings > 0) {
            sentence = "Good to print and bind. " + Counted.of(warnings, "warning") + " to review.";
        } else {
            sentence = "Good to print and bind.";
        }
        if (!r.documentChecked() && r.outcome() == Outcome.FINDINGS) {
            sentence = PLAN_ONLY + " Do not bind it. "
                    + (errors > 0 ? Counted.of(errors, "error") : Counted.of(warnings, "warning")) + " to resolve.";
        }
        long accepted = r.findings().stream().filter(f -> f.accepted() != null).count();
        if (accepted > 0) {
            sentence += " Accepted: " + Counted.of(accepted, "finding") + ".";
        }
        boolean excused = r.outcome() == Outcome.FINDINGS && r.job().failOn() == FailOn.NEVER;
        return excused ? sentence + " The check does not fail, as the job says (fail-on: never)." : sentence;
    }

    private static long count(Report r, Verdict verdict) {
        return r.pages().stream()
                .filter(p ->
                        p.verdict().verdict() == verdict && !passes(r, p.facts().page()))
                .count();
    }

    // somebody has accepted what was found on it, and nothing is left that is an error
    private static boolean passes(Report r, int page) {
        List<Finding> found =
                r.findings().stream().filter(f -> f.pages().contains(page)).toList();
        return found.stream().anyMatch(f -> f.accepted() != null)
                && found.stream().noneMatch(f -> f.counts(Severity.ERROR));
    }

    private static long count(Report r, Severity severity) {
        return r.findings().stream().filter(f -> f.counts(severity)).count();
    }
}
