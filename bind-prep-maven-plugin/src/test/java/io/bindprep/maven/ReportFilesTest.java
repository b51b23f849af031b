package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.BindPrep;
import io.bindprep.CheckRequest;
import io.bindprep.ReportFormat;
import io.bindprep.check.Report;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.UnreadableInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFilesTest {
    private static final Path PDF = Path.of(System.getProperty("bindprep.root"), "fixtures", "members-handbook-a4.pdf");
    private static final PdfInput BOOK = new PdfInput(PDF, "book.pdf", "book");

    private static CheckRequest request;
    private static Report report;

    @TempDir
    private Path folder;

    @BeforeAll
    static void checkOnce() throws Exception {
        request = CheckRequest.of(PDF, "book.pdf", JobReader.toJob(JobSettings.empty()));
        report = BindPrep.check(request);
    }

    private List<String> written(Path reports) throws IOException {
        try (var files = Files.list(reports)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writesWhatIsAskedForOverOldOnesAndLeavesNothingElse() throws Exception {
        Path reports = folder.resolve("not/yet/there");
        ReportFiles files = new ReportFiles(reports, List.of(ReportFormat.JSON, ReportFormat.TEXT));
        files.unreadable(
                BOOK, new UnreadableInputException(UnreadableInputException.Reason.DAMAGED, "It is broken.", "Ask."));
        assertThat(reports.resolve("book.json")).content().contains("unreadable");
        Path text = files.write(BOOK, request, report);
        assertThat(text).isEqualTo(reports.resolve("book.txt")).content().startsWith("Good to print");
        assertThat(reports.resolve("book.json")).content().contains("\"good\"");
        assertThat(written(reports)).containsExactly("book.json", "book.txt");
    }

    @Test
    void everyFormatAndTheFirstIsNamedWhereNoneIsForPeople() throws Exception {
        new ReportFiles(folder, List.of(ReportFormat.values())).write(BOOK, request, report);
        assertThat(written(folder)).hasSize(ReportFormat.values().length);
        Path named =
                new ReportFiles(folder, List.of(ReportFormat.SARIF, ReportFormat.JSON)).write(BOOK, request, report);
        assertThat(named).isEqualTo(folder.resolve("book.sarif"));
    }

    @Test
    void formatsByTheirNames() throws Exception {
        assertThat(ReportFiles.formats(List.of("sarif", " Text", "sarif")))
                .containsExactly(ReportFormat.SARIF, ReportFormat.TEXT);
        assertThatThrownBy(() -> ReportFiles.formats(List.of("xml")))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("<formats>")
                .hasMessageContaining("\"xml\"")
                .hasMessageContaining("junit");
    }

    @Test
    void whatCannotBeWrittenLeavesNothingHalf() throws IOException {
        Files.createDirectories(folder.resolve("book.json/occupied"));
        ReportFiles files = new ReportFiles(folder, List.of(ReportFormat.JSON, ReportFormat.TEXT));
        assertThatThrownBy(() -> files.write(BOOK, request, report)).isInstanceOf(IOException.class);
        assertThat(written(folder)).containsExactly("book.json");
    }
}
