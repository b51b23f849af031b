package io.bindprep.maven;

import io.bindprep.check.Finding;
import io.bindprep.check.Recheck;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.proof.ProofReport;
import io.bindprep.report.words.FindingText;
import io.bindprep.report.words.RecheckWords;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.wording.Counted;
import io.bindprep.wording.ProblemWords;
import io.bindprep.wording.Spelling;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Sentences of a build's log. */
final class Wording {
    private static final int SHOWN = 3;
    private static final int MOST_WHOLE = 10;
    private static final int MOST_LINES = 50;
    private static final int MOST_RANGES = 8;

    private Wording() {}

    /** The answer for a document; below it the worst findings with their pages and remedies, and where to read on. */
    static String checked(PdfInput document, Report report, String reportFile) {
        List<Finding> told = report.findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE && finding.accepted() == null)
                .toList();
        long notes = report.findings().stream()
                .filter(finding -> finding.counts(Severity.NOTE))
                .count();
        long accepted = report.findings().stream()
                .filter(finding -> finding.accepted() != null)
                .count();
        if (told.isEmpty()) {
            return document.name() + ": good, " + Counted.of(report.pages().size(), "page")
                    + (notes == 0 ? "" : ", " + Counted.of(notes, "note"))
                    + (accepted == 0 ? "" : ", " + Counted.of(accepted, "accepted finding"));
        }
        StringBuilder text = new StringBuilder(document.name() + ": " + VerdictSentence.of(report));
        for (Finding finding : told.subList(0, Math.min(SHOWN, told.size()))) {
            text.append("\n  ")
                    .append(word(finding.severity()))
                    .append(since(finding))
                    .append(": ");
            text.append(FindingText.located(finding, MOST_RANGES));
            text.append("\n    ").append(finding.remedy());
        }
        Recheck recheck = report.recheck();
        if (recheck != null) {
            text.append("\n  ").append(RecheckWords.summary(report, recheck));
        }
        String rest = rest(told, notes);
        if (!rest.isEmpty()) {
            text.append("\n  and ").append(rest);
        }
        return text.append("\n  report: ").append(reportFile).toString();
    }

    private static String since(Finding finding) {
        return finding.since() == null ? "" : " (" + RecheckWords.of(finding) + ")";
    }

    // findings are in the order of their severity, worst first
    private static String rest(List<Finding> told, long notes) {
        List<Finding> more = told.subList(Math.min(SHOWN, told.size()), told.size());
        List<String> counts = new ArrayList<>();
        for (Severity severity : List.of(Severity.ERROR, Severity.WARNING)) {
            long count = more.stream().filter(f -> f.severity() == severity).count();
            if (count > 0) {
                counts.add(count + " more " + (count == 1 ? word(severity) : word(severity) + "s"));
            }
        }
        if (notes > 0) {
            counts.add(Counted.of(notes, "note"));
        }
        return String.join(", ", counts);
    }

    private static String word(Severity severity) {
        return severity.name().toLowerCase(Locale.ROOT);
    }

    /**
     * The last line of a build that fails.
     *
     * @param errors documents that could not be checked
     * @param failures documents whose findings fail the build
     */
    static String why(int documents, int errors, int failures) {
        List<String> reasons = new ArrayList<>();
        if (errors > 0) {
            reasons.add(errors + " could not be checked");
        }
        if (failures > 0) {
            reasons.add(failures + (failures == 1 ? " has" : " have") + " findings that fail the build");
        }
        return "Why the build fails: of " + Counted.of(documents, "document") + " " + String.join(", ", reasons) + ".";
    }

    /**
     * A gate with nothing to look at.
     *
     * @param looked where it looked and for what, each as a text
     */
    static String noFiles(List<String> looked) {
        StringBuilder text = new StringBuilder("No PDF found, so nothing was checked");
        looked.forEach(where -> text.append("\n  Looked in ").append(where));
        return text.append("\n  Make a PDF in an earlier phase, or name it in <documents> or <filesets>."
                        + " To pass or fail without one, set <failIfNoFiles>.")
                .toString();
    }

    /** Result of a proof. */
    static String proved(PdfInput document, ProofReport proof) {
        String first = switch (proof.outcome()) {
            case WRITTEN -> "proof: " + proof.output() + ", " + Counted.of(proof.comments(), "comment");
            case NOTHING_FLAGGED -> "no proof, as every page is clear";
            case REFUSED -> "no proof\n  " + String.join("\n  ", proof.refusals());
        };
        StringBuilder text = new StringBuilder(document.name() + ": " + first);
        proof.notes().forEach(note -> text.append("\n  ").append(note));
        return text.toString();
    }

    /** The first line of a message, said once more in a later build. */
    static String unchanged(String message) {
        int end = message.indexOf('\n');
        String first = end < 0 ? message : message.substring(0, end);
        return first + " (as before, nothing changed)" + message.substring(first.length());
    }

    /** Problems of several documents: some whole, more by their first lines, the rest counted. */
    static String together(List<String> messages) {
        List<String> shown = new ArrayList<>();
        for (String message : messages.subList(0, Math.min(MOST_LINES, messages.size()))) {
            shown.add(
                    shown.size() < MOST_WHOLE
                            ? message
                            : message.lines().findFirst().orElse(""));
        }
        int more = messages.size() - shown.size();
        return String.join("\n", shown) + (more == 0 ? "" : "\nand " + more + " more documents");
    }

    /** A result that the disk would not take. */
    static String cannotWrite(String name, IOException e) {
        String file = e instanceof FileSystemException system ? system.getFile() + ": " : "";
        return name + ": its result cannot be written: " + file + ProblemWords.unwritten(e)
                + "\n  Make room for it, or name another folder (bindprep.reportDirectory).";
    }

    /** A file that the POM names and the system will not give us as text. */
    static String cannotRead(String parameter, String name, IOException e) {
        return parameter + ": cannot read " + name + ": " + ProblemWords.unread(e)
                + "\n  Name a file that is there, text in UTF-8.";
    }

    /** Our own mistake, but for memory. */
    static String internal(PdfInput document, Throwable e) {
        String outOfMemory = ProblemWords.outOfMemory("Maven", "MAVEN_OPTS=-Xmx1g");
        return document.name() + ": "
                + ProblemWords.internal(e, outOfMemory, "what mvn -X says, and the file if you may");
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
     * @param place where in a job file it stands; null where it stands in none
     */
    static String setting(String named, @Nullable String place, SettingException e) {
        return ProblemWords.setting(named, place, e, null);
    }

    /**
     * A value that a parameter does not know.
     *
     * @param thing what is not called so, "format"
     */
    static String unknown(String parameter, String thing, String name, List<String> known) {
        return parameter + ": no " + thing + " is called \"" + name + "\"\n  " + Spelling.remedy(name, known);
    }
}
