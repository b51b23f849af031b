package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.BindPrep;
import io.bindprep.ReportFormat;
import io.bindprep.job.FailOn;
import io.bindprep.job.Job;
import io.bindprep.job.Sides;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.codehaus.plexus.configuration.PlexusConfiguration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckRunTest {
    private static final Path FIXTURES = Path.of(System.getProperty("bindprep.root"), "fixtures");
    private static final JobSource NOTHING_SAID = new JobSource(null, null, null);

    @TempDir
    private Path base;

    private final RecordedLog log = new RecordedLog();

    @Test
    void aGoodDocumentIsOneLine() throws Exception {
        run(NOTHING_SAID, BindPrep::check).check(fixtures("members-handbook-a4.pdf"), false);
        assertThat(log.lines).hasSize(1);
        assertThat(log.lines.get(0)).startsWith("info: ").contains("members-handbook-a4.pdf: good, 24 pages");
        assertThat(report("members-handbook-a4.json")).contains("\"good\"");
        assertThat(report("members-handbook-a4.txt")).isNotEmpty();
    }

    @Test
    void findingsFailTheBuildAfterEveryReportIsWritten() {
        assertThatThrownBy(() -> run(NOTHING_SAID, BindPrep::check)
                        .check(fixtures("cookbook-letter.pdf", "members-handbook-a4.pdf"), false))
                .isInstanceOf(MojoFailureException.class)
                .hasMessageContaining("cookbook-letter.pdf: ")
                .hasMessageContaining("page 14")
                .hasMessageEndingWith("report: reports/cookbook-letter.txt")
                .message()
                .satisfies(text -> assertThat(text.lines().count()).isLessThanOrEqualTo(9));
        assertThat(base.resolve("reports/members-handbook-a4.json")).exists();
    }

    @Test
    void anUnreadableDocumentIsAnErrorEvenWhereNothingFails() throws Exception {
        JobSource never = new JobSource(null, null, "never");
        assertThatThrownBy(() -> run(never, BindPrep::check)
                        .check(fixtures("damaged.pdf", "cookbook-letter.pdf", "word-file.pdf"), false))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("damaged.pdf ")
                .hasMessageContaining("word-file.pdf ");
        assertThat(report("damaged.json")).contains("\"unreadable\"");
        assertThat(base.resolve("reports/cookbook-letter.json")).exists();
    }

    @Test
    void noDocumentIsQuietUnlessOneIsAskedFor() throws Exception {
        run(NOTHING_SAID, BindPrep::check).check(List.of(), false);
        assertThat(log.lines).isEmpty();
        assertThatThrownBy(() -> run(NOTHING_SAID, BindPrep::check).check(List.of(), true))
                .isInstanceOf(MojoFailureException.class)
                .hasMessageContaining("<documents>");
    }

    @Test
    void failOnGoesBeforeJobAndThatBeforeTheJobFile() throws Exception {
        Path file = Files.writeString(base.resolve("job.yaml"), "sides: one\ncopies: 7\nfail-on: error\n");
        PlexusConfiguration element = JobElementTest.job("<sides>two-head-to-foot</sides><failOn>warning</failOn>");
        Job job = jobOf(new JobSource(element, file.toFile(), "never"));
        assertThat(job.failOn()).isEqualTo(FailOn.NEVER);
        assertThat(job.sides()).isEqualTo(Sides.TWO_HEAD_TO_FOOT);
        assertThat(job.copies()).isEqualTo(7);
        assertThat(jobOf(new JobSource(element, file.toFile(), null)).failOn()).isEqualTo(FailOn.WARNING);
        assertThat(jobOf(NOTHING_SAID).failOn()).isEqualTo(FailOn.ERROR);
    }

    @Test
    void aWrongSettingIsNamedByWhereItStands() throws Exception {
        Path file = Files.writeString(base.resolve("job.yaml"), "copies: 2\nsides: three\n");
        assertWrong(new JobSource(null, file.toFile(), null), "job.yaml, line 2, column 8: sides: \"three\" ");
        assertWrong(
                new JobSource(JobElementTest.job("<boundEdge>bottom</boundEdge>"), null, null), "<job><boundEdge>: ");
        assertWrong(new JobSource(null, null, "sometimes"), "<failOn> (bindprep.failOn): ");
        assertWrong(new JobSource(JobElementTest.job("<failOn>sometimes</failOn>"), null, null), "<job><failOn>: ");
        assertWrong(
                new JobSource(null, new File("no such file.yaml"), null), "<jobFile>: cannot read no such file.yaml");
    }

    private void assertWrong(JobSource source, String start) {
        assertThatThrownBy(() -> run(source, BindPrep::check).check(List.of(), false))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageStartingWith(start);
    }

    @Test
    void aSettingThatOnlyTheDocumentProvesWrongIsNamedToo() throws Exception {
        JobSource source = new JobSource(JobElementTest.job("<covers><front>film-75</front></covers>"), null, null);
        Engine engine = request -> {
            throw new SettingException("covers.front", "x", "page 9 is not there", "look", List.of());
        };
        assertThatThrownBy(() -> run(source, engine).check(fixtures("damaged.pdf"), false))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessage("<job><covers><front>: page 9 is not there\n  Look.");
    }

    private Job jobOf(JobSource source) throws MojoFailureException {
        List<Job> seen = new ArrayList<>();
        Engine engine = request -> {
            seen.add(request.job());
            throw new UnreadableInputException(UnreadableInputException.Reason.MISSING, "not there", "Look.");
        };
        assertThatThrownBy(() -> run(source, engine).check(fixtures("damaged.pdf"), false))
                .isInstanceOf(MojoExecutionException.class);
        return seen.get(0);
    }

    private CheckRun run(JobSource source, Engine engine) {
        ReportFiles reports = new ReportFiles(base.resolve("reports"), List.of(ReportFormat.JSON, ReportFormat.TEXT));
        return new CheckRun(base, reports, source, engine, log);
    }

    private static List<PdfInput> fixtures(String... names) {
        Documents documents = new Documents(FIXTURES);
        for (String name : names) {
            documents.add(new File(name));
        }
        return documents.inOrder();
    }

    private String report(String name) throws IOException {
        return Files.readString(base.resolve("reports").resolve(name));
    }
}
