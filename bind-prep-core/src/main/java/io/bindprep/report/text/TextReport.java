package io.bindprep.report.text;

import io.bindprep.check.Finding;
import io.bindprep.check.Outcome;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.words.JobNumbers;
import io.bindprep.report.words.SafetyLine;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.wording.Counted;
import io.bindprep.wording.PageLists;
import java.util.List;
import java.util.Locale;

/** Writes a report as one screen of text: the verdict first, then the numbers, then what was found and what to do. */
public final class TextReport {
    private static final int MOST_FINDINGS = 8;
    private static final int MOST_RANGES = 8;

    private TextReport() {}

    /** The report as lines that end in a line feed, at most about forty of them. */
    public static String write(Report report, TextStyle style) {
        Lines lines = new Lines(style);
        boolean good = report.outcome() != Outcome.FINDINGS;
        lines.paragraph(good ? Lines.Tint.GOOD : Lines.Tint.BAD, VerdictSentence.of(report));
        lines.blank();
        for (JobNumbers.Entry entry : JobNumbers.of(report)) {
            lines.entry(Lines.Tint.NONE, entry.label(), entry.lines().get(0));
            entry.lines().stream().skip(1).forEach(lines::more);
        }
        if (!report.findings().isEmpty()) {
            lines.blank();
            findings(report.findings(), lines);
        }
        lines.blank();
        lines.paragraph(Lines.Tint.NONE, SafetyLine.TEXT);
        return lines.toString();
    }

    /** Report on a file that could not be read at all. */
    public static String unreadable(String file, UnreadableInputException problem, TextStyle style) {
        Lines lines = new Lines(style);
        lines.paragraph(Lines.Tint.BAD, "Not checked: " + file + " cannot be read, so nothing is known of it.");
        lines.blank();
        lines.entry(Lines.Tint.BAD, "Problem", String.valueOf(problem.getMessage()));
        lines.entry(Lines.Tint.NONE, "Do", problem.remedy());
        return lines.toString();
    }

    private static void findings(List<Finding> findings, Lines lines) {
        int shown = Math.min(MOST_FINDINGS, findings.size());
        for (Finding f : findings.subList(0, shown)) {
            String pages = f.pages().isEmpty()
                    ? ""
                    : ", " + (f.pages().size() == 1 ? "page " : "pages ") + PageLists.compact(f.pages(), MOST_RANGES);
            Finding.Accepted by = f.accepted();
            lines.entry(
                    by == null ? tint(f.severity()) : Lines.Tint.QUIET,
                    by == null ? f.severity().name() : "ACCEPTED",
                    f.rule() + pages);
            lines.more(f.message());
            lines.more(by == null ? "Do: " + f.remedy() : "Accepted by " + by.who() + ": " + by.reason());
        }
        List<Finding> rest = findings.subList(shown, findings.size());
        if (!rest.isEmpty()) {
            StringBuilder more = new StringBuilder();
            for (Severity severity : Severity.values()) {
                long count = rest.stream().filter(f -> f.severity() == severity).count();
                if (count > 0) {
                    more.append(more.isEmpty() ? "" : ", ")
                            .append(Counted.of(count, severity.name().toLowerCase(Locale.ROOT)));
                }
            }
            lines.entry(Lines.Tint.NONE, "And more", more + " not shown; the JSON report lists all.");
        }
    }

    private static Lines.Tint tint(Severity severity) {
        return switch (severity) {
            case ERROR -> Lines.Tint.BAD;
            case WARNING -> Lines.Tint.CARE;
            case NOTE -> Lines.Tint.QUIET;
        };
    }
}
