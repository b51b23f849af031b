package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.BindPrep;
import io.bindprep.ReportFormat;
import io.bindprep.check.Report;
import io.bindprep.files.Inputs;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.build.SummaryRow;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class CheckWorkTest {
    private static final Path PDF = Path.of(System.getProperty("bindprep.root"), "fixtures", "members-handbook-a4.pdf");
    private static final PdfInput BOOK = new PdfInput(PDF, "book.pdf", "book", null);

    private static CheckRequest request;
    private static Report report;

    @TempDir
    private Path folder;

    @BeforeAll
    static void checkOnce() throws Exception {
        request = CheckRequest.of(PDF, "book.pdf", JobReader.toJob(JobSettings.empty()));
        report = BindPrep.check(request);
    }

    private CheckWork work(Path reports, ReportFormat... formats) {
        return new CheckWork(new OutputFolder(folder, reports, Inputs.NONE), List.of(formats), any -> report);
    }

    private static List<String> written(Path reports) throws IOException {
        try (var files = Files.list(reports)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void writesWhatIsAskedForOverOldOnesAndLeavesNothingElse() throws Exception {
        Path reports = folder.resolve("not/yet/there");
        CheckWork work = work(reports, ReportFormat.JSON, ReportFormat.TEXT);
        work.unreadable(
                BOOK, new UnreadableInputException(UnreadableInputException.Reason.DAMAGED, "It is broken.", "Ask."));
        assertThat(reports.resolve("book.json")).content().contains("unreadable");
        Made made = work.make(BOOK, request);
        assertThat(made.files()).containsExactly(reports.resolve("book.json"), reports.resolve("book.txt"));
        assertThat(made.sha256()).isEqualTo(Digests.of(PDF));
        assertThat(reports.resolve("book.txt")).content().startsWith("Good to print");
        assertThat(reports.resolve("book.json")).content().contains("\"good\"");
        assertThat(written(reports)).containsExactly("book.json", "book.txt");
    }

    @Test
    void everyFormatHasItsFile() throws Exception {
        work(folder, ReportFormat.values()).make(BOOK, request);
        assertThat(written(folder)).hasSize(ReportFormat.values().length);
    }

    @Test
    void theLogNamesTheReportForPeopleElseTheFirst() throws Exception {
        Path cookbook = PDF.resolveSibling("cookbook-letter.pdf");
        CheckRequest bad = CheckRequest.of(cookbook, "book.pdf", request.job());
        for (List<ReportFormat> formats : List.of(
                List.of(ReportFormat.SARIF, ReportFormat.TEXT), List.of(ReportFormat.SARIF, ReportFormat.JSON))) {
            CheckWork work = new CheckWork(new OutputFolder(folder, folder, Inputs.NONE), formats, BindPrep::check);
            assertThat(work.make(BOOK, bad).message())
                    .endsWith("report: book." + (formats.contains(ReportFormat.TEXT) ? "txt" : "sarif"));
        }
    }

    @Test
    void formatsByTheirNames() throws Exception {
        assertThat(CheckWork.formats(List.of("sarif", " Text", "sarif")))
                .containsExactly(ReportFormat.SARIF, ReportFormat.TEXT);
        assertThatThrownBy(() -> CheckWork.formats(List.of("xml")))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("<formats>")
                .hasMessageContaining("\"xml\"")
                .hasMessageContaining("junit");
    }

    @Test
    void comparedWithAnEarlierCheckOnlyWhatIsNewFails() throws Exception {
        Path cookbook = PDF.resolveSibling("cookbook-letter.pdf");
        CheckRequest bad = CheckRequest.of(cookbook, "book.pdf", request.job());
        Path before = folder.resolve("before");
        OutputFolder now = new OutputFolder(folder, folder.resolve("now"), Inputs.NONE);
        new CheckWork(new OutputFolder(folder, before, Inputs.NONE), List.of(ReportFormat.JSON), BindPrep::check)
                .make(BOOK, bad);
        EarlierReports same = EarlierReports.of(before, true, now.directory());
        CheckWork work = new CheckWork(now, List.of(ReportFormat.JSON), BindPrep::check, same, null, true);
        Made made = work.make(BOOK, bad);
        assertThat(made.level()).isEqualTo(Made.Level.CARE);
        assertThat(made.message()).contains("error (still there): ", "Only new and worse findings fail");
        Files.delete(before.resolve("book.json"));
        EarlierReports none = EarlierReports.of(before, true, now.directory());
        CheckWork fresh = new CheckWork(now, List.of(ReportFormat.JSON), BindPrep::check, none, null, true);
        assertThat(fresh.settings()).isNotEqualTo(work.settings());
        assertThat(fresh.make(BOOK, bad).level()).isEqualTo(Made.Level.BAD);
        assertThatThrownBy(() -> EarlierReports.of(before, true, before)).hasMessageContaining("of their own");
        assertThatThrownBy(() -> EarlierReports.of(folder.resolve("x"), true, before))
                .hasMessageContaining("no folder");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void anEarlierReportIsNeverWrittenOverThroughALink() throws Exception {
        Path before = Files.createDirectory(folder.resolve("before"));
        new CheckWork(new OutputFolder(folder, before, Inputs.NONE), List.of(ReportFormat.JSON), BindPrep::check)
                .make(BOOK, request);
        String was = Files.readString(before.resolve("book.json"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), before);
        assertThatThrownBy(() -> EarlierReports.of(before, false, link)).hasMessageContaining("of their own");
        Path now = Files.createDirectory(folder.resolve("now"));
        Files.createSymbolicLink(now.resolve("book.json"), before.resolve("book.json"));
        OutputFolder output = new OutputFolder(folder, now, Inputs.NONE);
        CheckWork work = new CheckWork(
                output, List.of(ReportFormat.JSON), BindPrep::check, EarlierReports.of(before, false, now), null, true);
        assertThatThrownBy(() -> work.make(BOOK, request)).hasMessageContaining("an earlier report");
        assertThat(before.resolve("book.json")).hasContent(was);
    }

    @Test
    void oneSummaryTellsOfAllDocumentsWithLinksBesideIt() throws Exception {
        List<String> names = List.of("json", " Summary", "client", "client-md");
        OutputFolder output = new OutputFolder(folder, folder.resolve("out"), Inputs.NONE);
        CheckWork work =
                new CheckWork(output, CheckWork.formats(names), any -> report, null, CheckWork.summary(names), true);
        Made made = work.make(BOOK, request);
        work.add(1, made.row());
        work.add(0, SummaryRow.unchecked("a|b.pdf", "/x/a|b.pdf", "/x/a|b.pdf is no PDF.", Map.of()));
        work.finish(2);
        assertThat(output.directory().resolve("summary.md"))
                .content()
                .contains("2 documents: 1 not checked, 1 good.")
                .containsSubsequence(
                        "| a\\|b.pdf | Not checked. It is no PDF. |  |  |  |",
                        "| book.pdf | Good to print and bind. | 12 |  | [json](book.json), ");
        assertThat(work.settings())
                .isNotEqualTo(new CheckWork(output, CheckWork.formats(names), any -> report).settings());
        assertThat(CheckWork.summary(List.of("json"))).isNull();
    }

    @Test
    void whatGoesOutWithTheProjectTellsNoTime() throws Exception {
        for (boolean timed : List.of(true, false)) {
            OutputFolder output = new OutputFolder(folder, folder.resolve("timed-" + timed), Inputs.NONE);
            new CheckWork(output, List.of(ReportFormat.JUNIT), BindPrep::check, null, null, timed).make(BOOK, request);
            String junit = Files.readString(output.directory().resolve("book.junit.xml"));
            assertThat(junit.contains("skipped=\"1\" time=\"0\"") || junit.contains("skipped=\"0\" time=\"0\""))
                    .isNotEqualTo(timed);
        }
    }

    @Test
    void whatCannotBeWrittenLeavesNothingHalf() throws IOException {
        Files.createDirectories(folder.resolve("book.json/occupied"));
        CheckWork work = work(folder, ReportFormat.JSON, ReportFormat.TEXT);
        assertThatThrownBy(() -> work.make(BOOK, request)).isInstanceOf(IOException.class);
        assertThat(written(folder)).containsExactly("book.json");
    }
}
