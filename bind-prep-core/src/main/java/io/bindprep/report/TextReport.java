package io.bindprep.report;

import io.bindprep.check.Finding;
import io.bindprep.check.Outcome;
import io.bindprep.check.PageRanges;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.job.FailOn;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import java.util.List;
import java.util.Locale;

/** Writes a report as one screen of text: the verdict first, then the numbers, then what was found and what to do. */
public final class TextReport {
    private static final int MOST_FINDINGS = 8;
    private static final int MOST_RANGES = 8;

    // the cautions that printers' safety guides agree on; worded here, not quoted
    private static final String CAUTION =
            "Punch a waste sheet first. The machine's manual, site rules and local law come"
                    + " before this report; only trained people run punches, cutters and closers.";

    private TextReport() {}

    /** The report as lines that end in a line feed, at most about forty of them. */
    public static String write(Report report, TextStyle style) {
        Lines lines = new Lines(style);
        boolean good = report.outcome() == Outcome.GOOD;
        lines.paragraph(good ? Lines.Tint.GOOD : Lines.Tint.BAD, verdict(report));
        lines.blank();
        new JobLines(report, lines).write();
        if (!report.findings().isEmpty()) {
            lines.blank();
            findings(report.findings(), lines);
        }
        lines.blank();
        lines.paragraph(Lines.Tint.NONE, CAUTION);
        return lines.toString();
    }

    /** What to say of a file that could not be read at all. */
    public static String unreadable(String file, UnreadableInputException problem, TextStyle style) {
        Lines lines = new Lines(style);
        lines.paragraph(Lines.Tint.BAD, "Not checked: " + file + " cannot be read, so nothing is known of it.");
        lines.blank();
        lines.entry(Lines.Tint.BAD, "Problem", String.valueOf(problem.getMessage()));
        lines.entry(Lines.Tint.NONE, "Do", problem.remedy());
        return lines.toString();
    }

    private static String verdict(Report r) {
        long punched = count(r, Verdict.PUNCHED);
        long unread = count(r, Verdict.UNREAD);
        long errors = count(r, Severity.ERROR);
        long warnings = count(r, Severity.WARNING);
        String sentence;
        if (punched > 0 && unread > 0) {
            sentence = "Do not print: " + JobLines.counted(punched, "page") + " would lose matter to the holes, and "
                    + JobLines.counted(unread, "page") + " could not be read whole.";
        } else if (punched > 0) {
            sentence = "Do not print: " + JobLines.counted(punched, "page") + " would lose matter to the holes.";
        } else if (unread > 0) {
            sentence = "Do not print yet: " + JobLines.counted(unread, "page")
                    + " could not be read whole, so nothing is known of " + (unread == 1 ? "it." : "them.");
        } else if (errors > 0) {
            sentence = "Do not print: " + JobLines.counted(errors, "error") + " below.";
        } else if (r.outcome() == Outcome.FINDINGS) {
            sentence = "Do not print yet: " + JobLines.counted(warnings, "warning") + " below, and this job fails on"
                    + " warnings.";
        } else if (warnings > 0) {
            sentence = "Good to print and bind, once " + JobLines.counted(warnings, "warning") + " below "
                    + (warnings == 1 ? "is" : "are") + " looked at.";
        } else {
            sentence = "Good to print and bind.";
        }
        boolean excused = r.outcome() == Outcome.FINDINGS && r.job().failOn() == FailOn.NEVER;
        return excused ? sentence + " (fail-on is never, so this does not fail the check.)" : sentence;
    }

    private static void findings(List<Finding> findings, Lines lines) {
        int shown = Math.min(MOST_FINDINGS, findings.size());
        for (Finding f : findings.subList(0, shown)) {
            String pages = f.pages().isEmpty()
                    ? ""
                    : ", " + (f.pages().size() == 1 ? "page " : "pages ") + PageRanges.compact(f.pages(), MOST_RANGES);
            lines.entry(tint(f.severity()), f.severity().name(), f.rule() + pages);
            lines.more(f.message());
            lines.more("Do: " + f.remedy());
        }
        List<Finding> rest = findings.subList(shown, findings.size());
        if (!rest.isEmpty()) {
            StringBuilder more = new StringBuilder();
            for (Severity severity : Severity.values()) {
                long count = rest.stream().filter(f -> f.severity() == severity).count();
                if (count > 0) {
                    more.append(more.isEmpty() ? "" : ", ")
                            .append(JobLines.counted(count, severity.name().toLowerCase(Locale.ROOT)));
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

    private static long count(Report r, Verdict verdict) {
        return r.pages().stream().filter(p -> p.verdict().verdict() == verdict).count();
    }

    private static long count(Report r, Severity severity) {
        return r.findings().stream().filter(f -> f.severity() == severity).count();
    }
}
