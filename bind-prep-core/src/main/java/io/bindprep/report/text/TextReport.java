package io.bindprep.report.text;

import io.bindprep.check.Finding;
import io.bindprep.check.Outcome;
import io.bindprep.check.Recheck;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.words.FindingText;
import io.bindprep.report.words.JobNumbers;
import io.bindprep.report.words.JobSummary;
import io.bindprep.report.words.RecheckWords;
import io.bindprep.report.words.SafetyLine;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.report.words.WhatIfTable;
import io.bindprep.wording.Counted;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes a report as one screen of text: the verdict first, then the numbers, then what was found and what to do. */
public final class TextReport {
    private static final int MOST_FINDINGS = 8;
    private static final int MOST_RANGES = 8;

    private TextReport() {}

    /** The report as lines that end in a line feed: a good one fits ten at 80 columns, unless notes are asked for. */
    public static String write(Report report, TextStyle style) {
        Lines lines = new Lines(style);
        boolean good = report.outcome() != Outcome.FINDINGS;
        lines.paragraph(good ? Lines.Tint.GOOD : Lines.Tint.BAD, VerdictSentence.of(report));
        Recheck recheck = report.recheck();
        if (recheck != null) {
            lines.paragraph(Lines.Tint.NONE, RecheckWords.summary(report, recheck));
        }
        List<Finding> notes = report.findings().stream()
                .filter(f -> f.severity() == Severity.NOTE)
                .toList();
        List<Finding> serious = report.findings().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .toList();
        if (!serious.isEmpty()) {
            lines.blank();
            findings(serious, lines);
        }
        if (style.notes() && !notes.isEmpty()) {
            lines.blank();
            findings(notes, lines);
        }
        if (recheck != null && !recheck.gone().isEmpty()) {
            lines.blank();
            gone(recheck.gone(), lines);
        }
        lines.blank();
        for (JobNumbers.Entry entry : style.notes() ? JobNumbers.of(report) : JobSummary.of(report)) {
            if (!entry.label().equals("What if")) {
                lines.entry(Lines.Tint.NONE, entry.label(), entry.lines().get(0));
                entry.lines().stream().skip(1).forEach(lines::more);
            }
        }
        boolean clear = report.pages().stream().allMatch(p -> p.verdict().verdict() == Verdict.CLEAR);
        if (style.notes() || !clear) {
            whatIf(report, lines);
        }
        if (!style.notes() && !notes.isEmpty()) {
            lines.entry(Lines.Tint.QUIET, "NOTE", folded(notes));
        }
        lines.paragraph(Lines.Tint.NONE, SafetyLine.TEXT);
        return lines.toString();
    }

    private static String folded(List<Finding> notes) {
        String ids = notes.stream().map(Finding::rule).distinct().collect(Collectors.joining(", "));
        return Counted.of(notes.size(), "note") + ": " + ids + ". To read " + (notes.size() == 1 ? "it" : "them")
                + ": --notes";
    }

    private static void whatIf(Report report, Lines lines) {
        List<List<String>> rows = WhatIfTable.rows(report);
        if (!rows.isEmpty()) {
            lines.blank();
            lines.table("What if", WhatIfTable.HEAD, rows);
            lines.blank();
        }
    }

    /** Report on a file that could not be read at all. */
    public static String unreadable(String file, UnreadableInputException problem, TextStyle style) {
        Lines lines = new Lines(style);
        lines.paragraph(Lines.Tint.BAD, "Not checked: " + file + " cannot be read. Nothing is known of it.");
        lines.blank();
        lines.entry(Lines.Tint.BAD, "Problem", String.valueOf(problem.getMessage()));
        lines.entry(Lines.Tint.NONE, "Do", problem.remedy());
        return lines.toString();
    }

    private static void findings(List<Finding> findings, Lines lines) {
        int shown = Math.min(MOST_FINDINGS, findings.size());
        for (Finding f : findings.subList(0, shown)) {
            Finding.Accepted by = f.accepted();
            lines.entry(
                    by == null ? tint(f.severity()) : Lines.Tint.QUIET,
                    by == null ? f.severity().name() : "ACCEPTED",
                    FindingText.located(f, MOST_RANGES) + " [" + f.rule()
                            + (f.since() == null ? "" : ", " + RecheckWords.of(f)) + "]");
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
            lines.entry(Lines.Tint.NONE, "And more", more + " not shown. The JSON report lists all.");
        }
    }

    private static void gone(List<Recheck.Gone> gone, Lines lines) {
        int shown = Math.min(MOST_FINDINGS, gone.size());
        for (Recheck.Gone g : gone.subList(0, shown)) {
            lines.entry(
                    g.known() ? Lines.Tint.GOOD : Lines.Tint.CARE,
                    g.known() ? "FIXED" : "NOT KNOWN",
                    g.rule() + RecheckWords.pages(g) + " of the earlier file");
            lines.more(
                    g.known()
                            ? "It was: " + g.message()
                            : "The page cannot be read now, so nobody knows. It was: " + g.message());
        }
        if (gone.size() > shown) {
            lines.entry(
                    Lines.Tint.NONE, "And more", (gone.size() - shown) + " gone not shown; the JSON report lists all.");
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
