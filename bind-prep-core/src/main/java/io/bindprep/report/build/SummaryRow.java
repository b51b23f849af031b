package io.bindprep.report.build;

import io.bindprep.check.Finding;
import io.bindprep.check.Outcome;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.report.words.FindingText;
import io.bindprep.report.words.RecheckWords;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.wording.Markdown;
import io.bindprep.wording.Printable;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * One document of a run, as a row of its summary.
 *
 * @param rank the worse, the earlier
 * @param text the row in Markdown, one line without its end
 */
public record SummaryRow(Rank rank, String text) {
    private static final int MOST_RANGES = 4;
    private static final int MOST_NAME = 200;
    private static final int MOST_WORDS = 320;

    /** Results that a document can have, the worst first. */
    public enum Rank {
        /** It was not looked at, so nothing is known of it. */
        UNCHECKED("not checked"),
        /** The check fails. */
        FAILED("failed"),
        /** Something is wrong, but the job lets it pass. */
        EXCUSED("with findings that fail nothing"),
        /** Something may be wrong. */
        WARNED("good, with warnings"),
        /** Nothing is wrong. */
        GOOD("good");

        private final String counted;

        Rank(String counted) {
            this.counted = counted;
        }

        /** Words behind a number of documents. */
        String counted() {
            return counted;
        }
    }

    /**
     * A document that was checked.
     *
     * @param name of the document, the same on every machine
     * @param links the reports on it: words, and the path from the summary's folder with slashes
     */
    public static SummaryRow of(Report report, String name, Map<String, String> links) {
        Checked.require(report);
        List<Finding> open = report.findings().stream()
                .filter(f -> f.accepted() == null && f.severity() != Severity.NOTE)
                .toList();
        return row(
                rank(report, open),
                name,
                VerdictSentence.of(report),
                Integer.toString(report.block().leaves().size()),
                open.isEmpty() ? "" : worst(open),
                links);
    }

    /**
     * A document that was not checked.
     *
     * @param name as in {@link #of}
     * @param file how the sentence calls it
     * @param why one sentence
     * @param links as in {@link #of}
     */
    public static SummaryRow unchecked(String name, String file, String why, Map<String, String> links) {
        // the name stands before it already
        String said = why.startsWith(file + " ") ? "It" + why.substring(file.length()) : why;
        return row(Rank.UNCHECKED, name, "Not checked. " + said, "", "", links);
    }

    private static Rank rank(Report report, List<Finding> open) {
        if (report.failed()) {
            return Rank.FAILED;
        }
        if (report.outcome() == Outcome.FINDINGS || open.stream().anyMatch(f -> f.severity() == Severity.ERROR)) {
            return Rank.EXCUSED;
        }
        return open.isEmpty() ? Rank.GOOD : Rank.WARNED;
    }

    private static String worst(List<Finding> open) {
        Finding first = open.get(0);
        String since = first.since() == null ? "" : RecheckWords.of(first) + "; ";
        return shortened(since + FindingText.located(first, MOST_RANGES), MOST_WORDS) + " (" + first.rule() + ")"
                + (open.size() == 1 ? "" : " And " + (open.size() - 1) + " more.");
    }

    private static SummaryRow row(
            Rank rank, String name, String verdict, String leaves, String worst, Map<String, String> links) {
        String linked = links.entrySet().stream()
                .map(link -> Markdown.link(link.getKey(), link.getValue()))
                .collect(Collectors.joining(", "));
        return new SummaryRow(
                rank,
                "| " + Markdown.plain(shortened(name, MOST_NAME)) + " | "
                        + Markdown.plain(shortened(verdict, MOST_WORDS)) + " | " + leaves + " | "
                        + Markdown.plain(worst) + " | " + linked + " |");
    }

    private static String shortened(String text, int most) {
        String line = Printable.line(text);
        return line.codePointCount(0, line.length()) <= most
                ? line
                : line.substring(0, line.offsetByCodePoints(0, most - 3)).strip() + "...";
    }
}
