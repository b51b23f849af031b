package io.bindprep.report.build;

import io.bindprep.check.Finding;
import io.bindprep.check.FindingKind;
import io.bindprep.check.FindingKinds;
import io.bindprep.check.Recheck;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.job.FailOn;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.json.Json;
import io.bindprep.report.words.FindingText;
import io.bindprep.report.words.RecheckWords;
import io.bindprep.wording.Counted;
import io.bindprep.wording.FileNames;
import io.bindprep.xml.XmlText;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Writes a report as JUnit XML, in the subset that common readers agree on: one suite for the file, one test for each
 * check, by the id of its finding. A test fails where the job fails on its findings; it is skipped where it found what the
 * job lets pass with a warning, or where it could not look at every page; a note passes. The first test, which reads the
 * document, has the time of all, as the pages are looked at once for all checks.
 */
public final class JunitReport {
    /** The test that says whether there is anything to check. */
    static final String READABLE = "document-readable";

    private static final int MOST_RANGES = 8;

    private enum Result {
        PASSED,
        FAILED,
        SKIPPED
    }

    /** One test: its result, its headline and its details. */
    private record Case(String name, Result result, String type, String message, String details) {
        static Case passed(String name) {
            return new Case(name, Result.PASSED, "", "", "");
        }

        static Case skipped(String name, String message) {
            return new Case(name, Result.SKIPPED, "", message, "");
        }
    }

    private JunitReport() {}

    /**
     * The report without a time, indented, ending in a line feed; the same bytes for the same report everywhere.
     *
     * @throws IllegalArgumentException for a plan without a PDF, of which no page was checked
     */
    public static String write(Report report) {
        return write(report, report.document().file(), Duration.ZERO);
    }

    /**
     * The report under a name that is the same on every machine.
     *
     * @param took time of the check
     * @throws IllegalArgumentException as {@link #write(Report)}
     */
    public static String write(Report report, String name, Duration took) {
        Checked.require(report);
        List<Case> cases = new ArrayList<>();
        cases.add(Case.passed(READABLE));
        for (String id : ids(report)) {
            cases.add(test(id, report));
        }
        return suite(name, cases, took);
    }

    /** Report on a file that could not be read at all: the first test fails and no other is there. */
    public static String unreadable(String file, UnreadableInputException e) {
        return unreadable(file, e, file);
    }

    /** The same under a name that is the same on every machine. */
    public static String unreadable(String file, UnreadableInputException e, String name) {
        String message = String.valueOf(e.getMessage()).replace(file, FileNames.portable(name));
        return suite(
                name,
                List.of(new Case(READABLE, Result.FAILED, Json.word(e.reason()), message, message + "\n" + e.remedy())),
                Duration.ZERO);
    }

    private static List<String> ids(Report report) {
        return Stream.concat(
                        FindingKinds.all().stream().map(FindingKind::id),
                        report.findings().stream().map(Finding::rule))
                .distinct()
                .toList();
    }

    private static Case test(String id, Report report) {
        List<Finding> found = report.findings().stream()
                .filter(f -> f.rule().equals(id) && f.accepted() == null)
                .toList();
        if (found.isEmpty()) {
            return accepted(id, report).orElseGet(() -> notFound(id, report));
        }
        Recheck recheck = report.recheck();
        boolean onlyNew = recheck != null && recheck.onlyNewFails();
        Optional<Finding> failing = found.stream()
                .filter(f -> fails(f, report.job().failOn(), onlyNew))
                .findFirst();
        Finding worst = failing.orElse(found.get(0));
        if (failing.isPresent()) {
            List<String> details = new ArrayList<>();
            for (Finding f : found) {
                details.add(since(f) + FindingText.located(f, MOST_RANGES));
                details.add("Do: " + f.remedy());
            }
            return new Case(
                    id,
                    Result.FAILED,
                    Json.word(worst.severity()),
                    headline(worst, found.size() - 1),
                    String.join("\n", details));
        }
        return worst.severity() == Severity.NOTE
                ? Case.passed(id)
                : Case.skipped(id, Json.word(worst.severity()) + ", let pass: " + headline(worst, found.size() - 1));
    }

    // passes with a note; readers show a test's output
    private static Optional<Case> accepted(String id, Report report) {
        List<String> said = new ArrayList<>();
        for (Finding f : report.findings()) {
            Finding.Accepted by = f.accepted();
            if (by != null && f.rule().equals(id)) {
                said.add("Accepted by " + by.who() + ": " + by.reason());
                said.add(FindingText.located(f, MOST_RANGES));
            }
        }
        return said.isEmpty()
                ? Optional.empty()
                : Optional.of(new Case(id, Result.PASSED, "", "", String.join("\n", said)));
    }

    // a check that did not see every page has not passed
    private static Case notFound(String id, Report report) {
        long unchecked = report.pages().stream()
                .filter(p -> p.verdict().verdict() == Verdict.UNCHECKED)
                .count();
        boolean content = FindingKinds.of(id).filter(FindingKind::ofContent).isPresent();
        if (content && unchecked > 0) {
            return Case.skipped(id, "not known: " + Counted.of(unchecked, "page") + " could not be read whole");
        }
        if (content && report.plan().row().holes().isEmpty()) {
            return Case.skipped(id, "not known: no hole row fits, so no page was held against holes");
        }
        return fixed(id, report.recheck());
    }

    private static Case fixed(String id, @Nullable Recheck recheck) {
        List<String> said = recheck == null
                ? List.of()
                : recheck.gone().stream()
                        .filter(g -> g.rule().equals(id) && g.known())
                        .map(g -> "Fixed" + RecheckWords.pages(g) + " of the earlier file. It was: " + g.message())
                        .toList();
        return new Case(id, Result.PASSED, "", "", String.join("\n", said));
    }

    private static boolean fails(Finding finding, FailOn failOn, boolean onlyNew) {
        Finding.Since since = finding.since();
        boolean known = onlyNew && since != null && since.change() == Finding.Change.SAME;
        return !known && fails(finding.severity(), failOn);
    }

    private static boolean fails(Severity severity, FailOn failOn) {
        return switch (failOn) {
            case ERROR -> severity == Severity.ERROR;
            case WARNING -> severity != Severity.NOTE;
            case NEVER -> false;
        };
    }

    private static String headline(Finding worst, int more) {
        return since(worst) + FindingText.located(worst, MOST_RANGES) + (more == 0 ? "" : " And " + more + " more.");
    }

    private static String since(Finding f) {
        return f.since() == null ? "" : RecheckWords.of(f) + "; ";
    }

    private static String suite(String name, List<Case> cases, Duration took) {
        // agents check out into folders of their own, and a name that differs has no history
        String file = FileNames.portable(name);
        String time = took.isZero() ? "0" : String.format(Locale.ROOT, "%.3f", took.toMillis() / 1000.0);
        XmlText xml = new XmlText();
        xml.open(
                "testsuite",
                "name",
                file,
                "tests",
                Integer.toString(cases.size()),
                "failures",
                count(cases, Result.FAILED),
                "errors",
                "0",
                "skipped",
                count(cases, Result.SKIPPED),
                "time",
                time);
        // readers part class names at the dots
        String group = "bind-prep." + file.replace('.', '_');
        for (Case c : cases) {
            String[] test = {
                "classname", group, "name", c.name(), "time", c.name().equals(READABLE) ? time : "0"
            };
            if (c.result() == Result.PASSED && c.details().isEmpty()) {
                xml.empty("testcase", test);
                continue;
            }
            xml.open("testcase", test);
            if (c.result() == Result.PASSED) {
                xml.leaf("system-out", c.details());
            } else if (c.result() == Result.FAILED) {
                xml.leaf("failure", c.details(), "type", c.type(), "message", c.message());
            } else {
                xml.empty("skipped", "message", c.message());
            }
            xml.close();
        }
        return xml.close().finish();
    }

    private static String count(List<Case> cases, Result result) {
        return Long.toString(cases.stream().filter(c -> c.result() == result).count());
    }
}
