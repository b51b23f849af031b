package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.BindPrep;
import io.bindprep.files.Inputs;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import io.bindprep.sheet.SheetFormat;
import io.bindprep.sheet.SheetPaper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetAndProofTest {
    private static final Path FIXTURES = Path.of(System.getProperty("bindprep.root"), "fixtures");
    private static final UnreadableInputException GONE =
            new UnreadableInputException(UnreadableInputException.Reason.MISSING, "It is gone.", "Look.");

    @TempDir
    private Path base;

    private OutputFolder folder() {
        return new OutputFolder(base, base.resolve("out"), Inputs.NONE);
    }

    private Work sheets() {
        return new SheetWork(folder(), List.of(SheetFormat.PDF), SheetPaper.A4, BindPrep::check);
    }

    private static PdfInput input(String fixture) {
        return new PdfInput(FIXTURES.resolve(fixture), fixture, "book", null);
    }

    private static CheckRequest request(String fixture) throws Exception {
        return CheckRequest.of(FIXTURES.resolve(fixture), fixture, JobReader.toJob(JobSettings.empty()));
    }

    private static Made make(Work work, String fixture) throws Exception {
        return work.make(input(fixture), request(fixture));
    }

    private static void assertPdf(Path file) throws IOException {
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-")
                .contains("%%EOF");
    }

    @Test
    void aSheetOfAGoodDocumentIsSaidInPassing() throws Exception {
        Made made = make(sheets(), "members-handbook-a4.pdf");
        assertThat(made.level()).isEqualTo(Made.Level.GOOD);
        assertThat(made.message()).isEqualTo("members-handbook-a4.pdf: job sheet: out/book.job-sheet.pdf");
        assertPdf(made.files().get(0));
    }

    @Test
    void theSheetOfABadDocumentIsAWarningAndFailsNothing() throws Exception {
        Made made = make(sheets(), "cookbook-letter.pdf");
        assertThat(made.level()).isEqualTo(Made.Level.CARE);
        assertThat(made.message()).contains("Do not print. ", "job sheet: out/book.job-sheet.pdf");
    }

    @Test
    void aSheetInEveryForm() throws Exception {
        List<SheetFormat> all = SheetWork.formats(List.of("pdf", " HTML", "json", "pdf"));
        Work work = new SheetWork(folder(), all, SheetPaper.A4, BindPrep::check);
        Made made = make(work, "members-handbook-a4.pdf");
        assertThat(made.message())
                .isEqualTo("members-handbook-a4.pdf: job sheet: out/book.job-sheet.pdf, out/book.job-sheet.html,"
                        + " out/book.job-sheet.json");
        assertPdf(made.files().get(0));
        assertThat(Files.readString(made.files().get(1)))
                .startsWith("<!doctype html>")
                .contains("members-handbook-a4.pdf");
        assertThat(Files.readString(made.files().get(2))).startsWith("{").contains("\"assembly\"");
        work.unreadable(input("members-handbook-a4.pdf"), GONE);
        assertThat(base.resolve("out")).isEmptyDirectory();
    }

    @Test
    void aFormThatASheetDoesNotHaveIsNamedWithThoseItHas() {
        assertThatThrownBy(() -> SheetWork.formats(List.of("pdf", "docx")))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessage("<sheetFormats> (bindprep.sheetFormats): no format of a job sheet is called \"docx\"\n"
                        + "  Known: pdf, html, json.");
    }

    @Test
    void paperByItsName() throws Exception {
        assertThat(SheetWork.paper(" Letter")).isEqualTo(SheetPaper.LETTER);
        assertThat(SheetWork.paper("a4")).isEqualTo(SheetPaper.A4);
        assertThatThrownBy(() -> SheetWork.paper("a3"))
                .isInstanceOf(MojoExecutionException.class)
                .hasMessageContaining("<paper>")
                .hasMessageContaining("a4, letter");
    }

    @Test
    void aProofFailsNothingForItsFindings() throws Exception {
        Made made = make(new ProofWork(folder(), false, BindPrep::check), "cookbook-letter.pdf");
        assertThat(made.level()).isEqualTo(Made.Level.GOOD);
        assertThat(made.message()).matches("cookbook-letter\\.pdf: proof: out/book\\.proof\\.pdf, \\d+ comments");
        assertPdf(made.files().get(0));
    }

    @Test
    void whatIsClearOrLockedHasNoProofAndNoOlderOneStays() throws Exception {
        Path stale = base.resolve("out/book.proof.pdf");
        Files.createDirectories(stale.getParent());
        Files.writeString(stale, "of an earlier build");
        Made clear = make(new ProofWork(folder(), true, BindPrep::check), "members-handbook-a4.pdf");
        assertThat(clear.level()).isEqualTo(Made.Level.GOOD);
        assertThat(clear.files()).isEmpty();
        assertThat(stale).doesNotExist();
        Files.writeString(stale, "of an earlier build");
        Made locked = make(new ProofWork(folder(), false, BindPrep::check), "owner-only.pdf");
        assertThat(locked.level()).isEqualTo(Made.Level.BAD);
        assertThat(locked.message()).contains("owner-only.pdf: no proof\n  Its owner does not allow");
        assertThat(stale).doesNotExist();
    }

    @Test
    void nothingOlderStaysOfADocumentThatCannotBeRead() throws Exception {
        make(sheets(), "members-handbook-a4.pdf");
        make(new ProofWork(folder(), false, BindPrep::check), "members-handbook-a4.pdf");
        sheets().unreadable(input("members-handbook-a4.pdf"), GONE);
        new ProofWork(folder(), false, BindPrep::check).unreadable(input("members-handbook-a4.pdf"), GONE);
        assertThat(base.resolve("out")).isEmptyDirectory();
    }

    @Test
    void theirSettingsTellThemApart() {
        List<SheetFormat> pdf = List.of(SheetFormat.PDF);
        List<SheetFormat> html = List.of(SheetFormat.HTML);
        assertThat(sheets().settings())
                .isNotEqualTo(new SheetWork(folder(), pdf, SheetPaper.LETTER, BindPrep::check).settings())
                .isNotEqualTo(new SheetWork(folder(), html, SheetPaper.A4, BindPrep::check).settings());
        assertThat(new ProofWork(folder(), true, BindPrep::check).settings())
                .isNotEqualTo(new ProofWork(folder(), false, BindPrep::check).settings());
    }
}
