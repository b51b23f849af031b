package io.bindprep.maven;

import io.bindprep.check.Finding;
import io.bindprep.check.Outcome;
import io.bindprep.check.PageRanges;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.job.FailOn;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a build's log says. */
final class Wording {
    private static final int SHOWN = 3;
    private static final int MOST_RANGES = 8;

    private Wording() {}

    /** One line for a document that does not fail the build; not called good where the job only never fails. */
    static String passed(PdfInput document, Report report, String reportFile) {
        int findings = report.findings().size();
        String counted = counted(findings, "finding");
        if (report.outcome() == Outcome.FINDINGS) {
            return document.name() + ": " + counted + ", which fail no build (failOn is never)\n  report: "
                    + reportFile;
        }
        return document.name() + ": good, " + counted(report.pages().size(), "page")
                + (findings == 0 ? "" : ", " + counted + " below what fails the build");
    }

    /** A document that failed: how many findings, the first of them with their remedies, and where to read on. */
    static String failed(PdfInput document, Report report, String reportFile) {
        List<Finding> failing = report.findings().stream()
                .filter(finding -> fails(finding.severity(), report.job().failOn()))
                .toList();
        StringBuilder text = new StringBuilder(document.name() + ": " + counted(failing.size(), "finding"));
        for (Finding finding : failing.subList(0, Math.min(SHOWN, failing.size()))) {
            text.append("\n  ").append(pages(finding.pages())).append(finding.message());
            text.append("\n    ").append(finding.remedy());
        }
        if (failing.size() > SHOWN) {
            text.append("\n  and ").append(failing.size() - SHOWN).append(" more");
        }
        return text.append("\n  report: ").append(reportFile).toString();
    }

    /** A document that nobody knows to be good. */
    static String unreadable(PdfInput document, UnreadableInputException e) {
        String message = Objects.requireNonNull(e.getMessage());
        return (message.contains(document.name()) ? "" : document.name() + ": ") + message + "\n  " + e.remedy();
    }

    /**
     * A setting that is wrong.
     *
     * @param named what the build calls it, "job.yaml, line 3, column 8: sides"
     * @param place where in a job file it stands, which the core says too; null where it stands in none
     */
    static String setting(String named, @Nullable String place, SettingException e) {
        String message = Objects.requireNonNull(e.getMessage()).replace(" (" + place + ")", "");
        String known = String.join(", ", e.known());
        String list = e.remedy().contains(known) ? "" : "\n  Known: " + known + ".";
        return named + ": " + message + list + "\n  " + sentence(e.remedy());
    }

    private static String sentence(String text) {
        String capital = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
        return capital.endsWith(".") ? capital : capital + ".";
    }

    private static boolean fails(Severity severity, FailOn failOn) {
        return switch (failOn) {
            case ERROR -> severity == Severity.ERROR;
            case WARNING -> severity != Severity.NOTE;
            case NEVER -> false;
        };
    }

    private static String pages(List<Integer> pages) {
        if (pages.isEmpty()) {
            return "";
        }
        return (pages.size() == 1 ? "page " : "pages ") + PageRanges.compact(pages, MOST_RANGES) + ": ";
    }

    private static String counted(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}
