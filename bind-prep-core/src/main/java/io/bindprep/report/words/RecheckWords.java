package io.bindprep.report.words;

import io.bindprep.check.Finding;
import io.bindprep.check.Recheck;
import io.bindprep.check.Report;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;

/** Sentences of a check that is compared with an earlier one. */
public final class RecheckWords {
    private static final int MOST_RANGES = 8;

    private RecheckWords() {}

    /** The comparison in a few sentences: "Since the check of old.pdf: 1 new, 2 still there, 3 fixed." */
    public static String summary(Report report, Recheck recheck) {
        if (!recheck.readable()) {
            return "No earlier check of " + recheck.file() + " is known that could read it, so every finding is new.";
        }
        List<String> counts = new ArrayList<>();
        add(counts, count(report, Finding.Change.NEW), "new");
        add(counts, count(report, Finding.Change.WORSE), "worse");
        add(counts, count(report, Finding.Change.SAME), "still there");
        add(counts, recheck.fixed(), "fixed");
        add(counts, recheck.unknown(), "not known");
        StringBuilder text =
                new StringBuilder("Since the check of ").append(recheck.file()).append(": ");
        text.append(counts.isEmpty() ? "nothing found then or now" : String.join(", ", counts))
                .append('.');
        if (recheck.sameFile()) {
            text.append(" It is the same file, byte for byte.");
        }
        if (!recheck.sameJob()) {
            text.append(" The job differs from that of the earlier check, so a change may come from the job.");
        }
        if (recheck.onlyNewFails()) {
            text.append(" Only new and worse findings fail this check.");
        }
        return text.toString();
    }

    /** "new", "still there", "worse: new on page 4"; empty where nothing was compared. */
    public static String of(Finding finding) {
        Finding.Since since = finding.since();
        return since == null
                ? ""
                : switch (since.change()) {
                    case NEW -> "new";
                    case WORSE -> "worse: " + since.detail();
                    case SAME -> "still there";
                };
    }

    /** State of a finding that is gone: "fixed", "fixed on these pages" or "not known". */
    public static String state(Recheck.Gone gone) {
        return !gone.known() ? "not known" : gone.whole() ? "fixed" : "fixed on these pages";
    }

    /** The pages of the earlier document: ", page 4"; empty for the whole document. */
    public static String pages(Recheck.Gone gone) {
        return gone.pages().isEmpty() ? "" : ", " + PageLists.named(gone.pages(), MOST_RANGES);
    }

    private static long count(Report report, Finding.Change change) {
        return report.findings().stream()
                .filter(f -> f.since() != null && f.since().change() == change)
                .count();
    }

    private static void add(List<String> counts, long count, String word) {
        if (count > 0) {
            counts.add(count + " " + word);
        }
    }
}
