package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.proof.ProofReport;
import io.bindprep.proof.ProofReport.Outcome;
import io.bindprep.report.ProofText;
import io.bindprep.report.TextStyle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fixtures with what was planted in them: see fixtures/README.md. */
class ProofTest {
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures");

    @TempDir
    private Path folder;

    private ProofReport proof(Path file, Map<String, String> job, boolean flagged, String password) throws Exception {
        CheckRequest check = new CheckRequest(
                file,
                file.getFileName().toString(),
                JobReader.toJob(JobSettings.of(job)),
                password,
                (done, total) -> {});
        return BindPrep.proof(new ProofRequest(check, folder.resolve("out.pdf"), "out.pdf", flagged));
    }

    private ProofReport fixture(String name, Map<String, String> job, boolean flagged) throws Exception {
        return proof(FIXTURES.resolve(name), job, flagged, null);
    }

    @Test
    void everyPageIsWrittenAndWhatWasFoundIsListed() throws Exception {
        ProofReport proof = fixture("cookbook-letter.pdf", Map.of("pitch", "3:1"), false);
        assertThat(proof.outcome()).isEqualTo(Outcome.WRITTEN);
        assertThat(proof.pages()).hasSize(100);
        assertThat(proof.comments()).isEqualTo(7);
        assertThat(ProofText.write(proof, TextStyle.PLAIN))
                .startsWith("Proof written: out.pdf, 100 pages, 7 comments.\n")
                .contains("Do not print: 2 pages would lose matter to the holes.");
        try (PDDocument document = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            assertThat(document.getPage(13).getAnnotations())
                    .extracting(a -> a.getContents())
                    .anySatisfy(words -> assertThat(words)
                            .startsWith("Would be punched at pin 26: text \"Bones: run a thumb along every fillet")
                            .contains("3 mm from the bound edge where the holes reach to 8.06 mm"));
        }
    }

    @Test
    void flaggedPagesAlone() throws Exception {
        ProofReport proof = fixture("cookbook-letter.pdf", Map.of("pitch", "3:1"), true);
        assertThat(proof.pages()).containsExactly(14, 27, 40, 41, 42, 43, 44);
        try (PDDocument document = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(7);
        }
        assertThat(Files.size(folder.resolve("out.pdf")))
                .isLessThan(Files.size(FIXTURES.resolve("cookbook-letter.pdf")));
    }

    @Test
    void whereNoPageIsFlaggedNothingIsWritten() throws Exception {
        ProofReport proof = fixture("members-handbook-a4.pdf", Map.of(), true);
        assertThat(proof.outcome()).isEqualTo(Outcome.NOTHING_FLAGGED);
        assertThat(folder.resolve("out.pdf")).doesNotExist();
    }

    @Test
    void whatMayNotBeChangedIsRefused() throws Exception {
        ProofReport proof = fixture("owner-only.pdf", Map.of(), false);
        assertThat(proof.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(proof.refusals()).singleElement().asString().contains("the owner's password");
        assertThat(folder.resolve("out.pdf")).doesNotExist();
    }

    @Test
    void ofALockedFileTheProofIsNotLockedAndSaysSo() throws Exception {
        String password = Files.readAllLines(FIXTURES.resolve("password.txt")).get(0);
        ProofReport proof = proof(FIXTURES.resolve("locked.pdf"), Map.of(), false, password);
        assertThat(proof.notes()).singleElement().asString().contains("encrypted");
        try (PDDocument document = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            assertThat(document.isEncrypted()).isFalse();
        }
    }

    @Test
    void theInputIsNeverOverwritten() throws Exception {
        Path input = Files.copy(FIXTURES.resolve("mixed-sizes.pdf"), folder.resolve("out.pdf"));
        byte[] before = Files.readAllBytes(input);
        assertThatThrownBy(() -> proof(input, Map.of(), false, null)).isInstanceOf(IOException.class);
        assertThat(Files.readAllBytes(input)).isEqualTo(before);
    }

    @Test
    void theSameBytesEachTime() throws Exception {
        fixture("calendar-a4-landscape.pdf", Map.of("bound-edge", "top", "sides", "one"), false);
        byte[] first = Files.readAllBytes(folder.resolve("out.pdf"));
        fixture("calendar-a4-landscape.pdf", Map.of("bound-edge", "top", "sides", "one"), false);
        assertThat(Files.readAllBytes(folder.resolve("out.pdf"))).isEqualTo(first);
    }
}
