package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.BindPrep;
import io.bindprep.ReportFormat;
import io.bindprep.check.Finding;
import io.bindprep.check.Report;
import io.bindprep.check.Severity;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GoalExecutionTest {
    private static final Path FIXTURES = Path.of(System.getProperty("bindprep.root"), "fixtures");
    private static final JobSource NOTHING_SAID = new JobSource(null, null, null);
    private static final JobSource NEVER = new JobSource(null, null, "never");

    @TempDir
    private Path base;

    private final RecordedLog log = new RecordedLog();

    @Test
    void aGoodDocumentIsOneLine() throws Exception {
        run(NOTHING_SAID, BindPrep::check, "members-handbook-a4.pdf");
        assertThat(log.lines).containsExactly("info: members-handbook-a4.pdf: good, 24 pages, 1 note");
        assertThat(report("members-handbook-a4.json")).contains("\"good\"");
        assertThat(report("members-handbook-a4.txt")).isNotEmpty();
    }

    @Test
    void findingsFailTheBuildAfterEveryReportIsWritten() {
        assertThatThrownBy(() -> run(NOTHING_SAID, BindPrep::check, "cookbook-letter.pdf", "members-handbook-a4.pdf"))
                .isInstanceOf(MojoFailureException.class)
                .hasMessageContaining("cookbook-letter.pdf: Do not print. ")
                .hasMessageContaining("\n  error: Page 14: text 0.12 in from the binding edge")
                .hasMessageContaining("\n    Have it moved")
                .hasMessageContaining("\n  report: reports/cookbook-letter.txt\n")
                .hasMessageEndingWith("\nWhy the build fails: of 2 documents 1 has findings that fail the build.")
                .message()
                .satisfies(text -> assertThat(text.lines().count()).isLessThanOrEqualTo(10));
        assertThat(base.resolve("reports/members-handbook-a4.json")).exists();
    }

    /** The example of this module's README.md; to make it anew: -Dbindprep.regenerate. */
    @Test
    void theReadmeShowsHowABuildEnds() throws Exception {
        Path readme = Path.of(System.getProperty("bindprep.root"), "bind-prep-maven-plugin/README.md");
        Pattern example = Pattern.compile("(?m)^(A build with a cookbook[^`]*```text\\R)((?s:.*?))^```");
        String text = Files.readString(readme);
        Matcher shown = example.matcher(text);
        assertThat(shown.find()).isTrue();
        String said = catchThrowableOfType(
                        MojoFailureException.class,
                        () -> run(NOTHING_SAID, BindPrep::check, "cookbook-letter.pdf", "members-handbook-a4.pdf"))
                .getMessage();
        if (System.getProperty("bindprep.regenerate") != null) {
            Files.writeString(readme, shown.replaceFirst(Matcher.quoteReplacement(shown.group(1) + said + "\n```")));
            return;
        }
        assertThat(shown.group(2)).isEqualTo(said + "\n");
    }

    @Test
    void findingsThatFailNothingAreAWarningWithPageAndRemedy() throws Exception {
        run(NEVER, BindPrep::check, "cookbook-letter.pdf");
        assertThat(log.lines).hasSize(1);
        assertThat(log.lines.get(0))
                .startsWith("warn: cookbook-letter.pdf: Do not print. ")
                .contains("\n  error: Page 14: text 0.12 in from the binding edge", "\n    Have it moved")
                .endsWith("report: reports/cookbook-letter.txt");
    }

    @Test
    void anUnreadableDocumentIsAnErrorEvenWhereNothingFails() throws Exception {
        assertThatThrownBy(() -> run(NEVER, BindPrep::check, "damaged.pdf", "cookbook-letter.pdf", "word-file.pdf"))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("damaged.pdf ")
                .hasMessageContaining("word-file.pdf ")
                .hasMessageEndingWith("\nWhy the build fails: of 3 documents 2 could not be checked.");
        assertThat(report("damaged.json")).contains("\"unreadable\"");
        assertThat(base.resolve("reports/cookbook-letter.json")).exists();
    }

    @Test
    void aSettingThatOnlyTheDocumentProvesWrongIsNamedAndTheOthersAreChecked() throws Exception {
        JobSource source = new JobSource(JobElementTest.job("<covers><front>film-75</front></covers>"), null, null);
        List<String> seen = new ArrayList<>();
        Engine engine = request -> {
            seen.add(request.name());
            throw new SettingException("covers.front", "x", "page 9 is not there", "look", List.of());
        };
        assertThatThrownBy(() -> run(source, engine, "damaged.pdf", "word-file.pdf"))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageStartingWith("<job><covers><front>: page 9 is not there\n  Look.");
        assertThat(seen).containsExactly("damaged.pdf", "word-file.pdf");
    }

    @Test
    void ourOwnMistakeIsOneDocumentsTrouble() {
        List<String> seen = new ArrayList<>();
        Engine engine = request -> {
            seen.add(request.name());
            throw new IllegalStateException("the check failed", new ArithmeticException("by zero"));
        };
        assertThatThrownBy(() -> run(NOTHING_SAID, engine, "damaged.pdf", "word-file.pdf"))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("damaged.pdf: internal error, ArithmeticException at io.bindprep.")
                .hasMessageContaining("word-file.pdf: internal error");
        assertThat(seen).hasSize(2);
    }

    @Test
    void memoryThatRunsOutIsNobodysMistake() {
        Engine engine = request -> {
            throw new IllegalStateException("the check failed", new OutOfMemoryError("Java heap space"));
        };
        assertThatThrownBy(() -> run(NOTHING_SAID, engine, "damaged.pdf"))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageStartingWith("damaged.pdf: the memory that Maven may use ran out.\n")
                .hasMessageContaining("MAVEN_OPTS=-Xmx1g")
                .hasMessageNotContaining("bug");
    }

    @Test
    void whatCannotBeWrittenIsSaid() throws Exception {
        Files.writeString(base.resolve("reports"), "a file where the folder belongs");
        assertThatThrownBy(() -> run(NOTHING_SAID, BindPrep::check, "members-handbook-a4.pdf"))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("members-handbook-a4.pdf: its result cannot be written: ")
                .hasMessageContaining("reports");
    }

    /** A job file whose name is that of a report: it is read, and so stays. */
    @Test
    void noReportIsWrittenOverAFileThatTheGoalReads() throws Exception {
        Files.createDirectories(base.resolve("reports"));
        Path job = Files.writeString(base.resolve("reports/members-handbook-a4.json"), "{\"stock\": \"bond-20\"}");
        JobSource source = new JobSource(null, job.toFile(), null);
        assertThatThrownBy(() -> run(source, BindPrep::check, "members-handbook-a4.pdf"))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("the job file", "never overwritten");
        assertThat(job).hasContent("{\"stock\": \"bond-20\"}");
        OutputFolder folder = new OutputFolder(
                base, base.resolve("reports"), source.read(base).inputs());
        folder.remove(new PdfInput(job, "members-handbook-a4.pdf", "members-handbook-a4", null), ".json");
        assertThat(job).exists();
    }

    @Test
    void findingsAreToldWorstFirstAndTheRestIsCounted() {
        Report cookbook = checked("cookbook-letter.pdf");
        List<Finding> findings = new ArrayList<>();
        for (Severity severity : List.of(Severity.ERROR, Severity.WARNING, Severity.NOTE)) {
            for (int i = 0; i < 2; i++) {
                findings.add(new Finding(
                        "font", severity, List.of(3), "Seen so.", "Do so.", null, null, null, null, null, null));
            }
        }
        findings.add(
                4,
                new Finding(
                        "font", Severity.WARNING, List.of(), "Seen so.", "Do so.", null, null, null, null, null, null));
        Report r = with(cookbook, findings);
        PdfInput document = new PdfInput(FIXTURES.resolve("cookbook-letter.pdf"), "book.pdf", "book", null);
        assertThat(Wording.checked(document, r, "book.txt").lines().skip(1))
                .containsExactly(
                        "  error: Seen so. Page 3.",
                        "    Do so.",
                        "  error: Seen so. Page 3.",
                        "    Do so.",
                        "  warning: Seen so. Page 3.",
                        "    Do so.",
                        "  and 2 more warnings, 2 notes",
                        "  report: book.txt");
    }

    private static Report checked(String name) {
        try {
            return BindPrep.check(
                    CheckRequest.of(FIXTURES.resolve(name), name, JobReader.toJob(JobSettings.of(Map.of()))));
        } catch (UnreadableInputException | SettingException e) {
            throw new AssertionError(e);
        }
    }

    private static Report with(Report r, List<Finding> findings) {
        return new Report(
                r.outcome(),
                r.failed(),
                r.document(),
                r.job(),
                r.block(),
                r.stack(),
                r.plan(),
                r.whatIf(),
                r.split(),
                r.run(),
                r.pages(),
                findings);
    }

    @Test
    void manyFailuresStayReadable() {
        List<String> many = IntStream.range(0, 70)
                .mapToObj(i -> "book" + i + "\n  why\n  do")
                .toList();
        List<String> lines = Wording.together(many).lines().toList();
        assertThat(lines).hasSize(10 * 3 + 40 + 1).endsWith("book49", "and 20 more documents");
        assertThat(Wording.together(List.of("one\n  why"))).isEqualTo("one\n  why");
    }

    private void run(JobSource source, Engine engine, String... names) throws Exception {
        Documents documents = new Documents(FIXTURES);
        for (String name : names) {
            documents.add(new Document(new File(name), null, null));
        }
        JobSource.Asked asked = source.read(base);
        OutputFolder folder = new OutputFolder(base, base.resolve("reports"), asked.inputs());
        Work work = new CheckWork(folder, List.of(ReportFormat.JSON, ReportFormat.TEXT), engine);
        UpToDate never = new UpToDate(base, "check", null);
        new GoalExecution(work, folder, never, new Attachments(null, null), log)
                .run(documents.inOrder().stream()
                        .map(input -> new GoalExecution.Task(input, source, asked, null, asked.inputs()))
                        .toList());
    }

    private String report(String name) throws IOException {
        return Files.readString(base.resolve("reports").resolve(name));
    }
}
