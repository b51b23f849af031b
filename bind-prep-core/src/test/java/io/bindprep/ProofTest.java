package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.proof.ProofReport;
import io.bindprep.proof.ProofReport.Result;
import io.bindprep.report.text.ProofText;
import io.bindprep.report.text.TextStyle;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ProofRequest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.digitalsignature.PDSignature;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.form.PDAcroForm;
import org.apache.pdfbox.pdmodel.interactive.form.PDSignatureField;
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
    void theLayersOfOnePageAreSmall() throws Exception {
        Path file = folder.resolve("one.pdf");
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage(PDRectangle.A4));
            document.save(file.toFile(), CompressParameters.NO_COMPRESSION);
        }
        proof(file, Map.of("pitch", "3:1"), false, null);
        assertThat(Files.size(folder.resolve("out.pdf"))).isLessThan(Files.size(file) + 1_300);
    }

    @Test
    void everyPageIsWrittenAndWhatWasFoundIsListed() throws Exception {
        ProofReport proof = fixture("cookbook-letter.pdf", Map.of("pitch", "3:1"), false);
        assertThat(proof.outcome()).isEqualTo(Result.WRITTEN);
        assertThat(proof.pages()).hasSize(100);
        assertThat(proof.comments()).isEqualTo(7);
        assertThat(ProofText.write(proof, TextStyle.PLAIN))
                .startsWith("Proof written: out.pdf, 100 pages, 7 comments.\n")
                .contains("Do not print. The holes would cut content on 2 pages.");
        try (PDDocument document = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            assertThat(document.getPage(13).getAnnotations())
                    .extracting(a -> a.getContents())
                    .anySatisfy(
                            words -> assertThat(words)
                                    .startsWith("The holes would cut text \"Bones: run a thumb along every fillet")
                                    .contains(
                                            "0.12 in from the binding edge; the holes, tolerance included, reach 0.32 in. At pin 26, "));
        }
    }

    /** A table's rules at the binding edge, 4 mm apart: one comment, every rule framed; a page number elsewhere has its own. */
    @Test
    void marksThatStandTogetherShareAComment() throws Exception {
        Path file = folder.resolve("table.pdf");
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                for (int i = 0; i < 30; i++) {
                    content.addRect(14, 700 - i * 11.3f, 60, 0.5f);
                    content.fill();
                }
                content.addRect(14, 60, 20, 8);
                content.fill();
            }
            document.save(file.toFile());
        }
        ProofReport proof = proof(file, Map.of(), false, null);
        try (PDDocument document = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            List<String> words = document.getPage(0).getAnnotations().stream()
                    .map(PDAnnotation::getContents)
                    .toList();
            assertThat(words).hasSize(proof.comments()).hasSizeLessThan(4);
            assertThat(words.get(0))
                    .contains("the nearest 4.9 mm")
                    .endsWith("the 20 worst marks are framed; there may be more.");
            int framed = words.stream()
                    .mapToInt(w -> w.matches("(?s).*(cut|edge:) \\d+ .*")
                            ? Integer.parseInt(w.replaceAll("(?s).*?(cut|edge:) (\\d+) .*", "$2"))
                            : 1)
                    .sum();
            assertThat(framed).isEqualTo(20);
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
        assertThat(proof.outcome()).isEqualTo(Result.NOTHING_FLAGGED);
        assertThat(folder.resolve("out.pdf")).doesNotExist();
    }

    @Test
    void whatMayNotBeChangedIsRefused() throws Exception {
        ProofReport proof = fixture("owner-only.pdf", Map.of(), false);
        assertThat(proof.outcome()).isEqualTo(Result.REFUSED);
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
        fixture("calendar-a4-landscape.pdf", Map.of("binding-edge", "top", "sides", "one"), false);
        byte[] first = Files.readAllBytes(folder.resolve("out.pdf"));
        fixture("calendar-a4-landscape.pdf", Map.of("binding-edge", "top", "sides", "one"), false);
        assertThat(Files.readAllBytes(folder.resolve("out.pdf"))).isEqualTo(first);
    }

    /** Three pages with a bookmark each and a signature; a bar 3 mm from the binding of the second. */
    private Path signedWithBookmarks() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDDocumentOutline outline = new PDDocumentOutline();
            document.getDocumentCatalog().setDocumentOutline(outline);
            for (int i = 0; i < 3; i++) {
                PDPage page = new PDPage(PDRectangle.A4);
                document.addPage(page);
                if (i == 1) {
                    try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                        // bound at the right, as a back
                        content.addRect(PDRectangle.A4.getWidth() - 8.504f - 30, 400, 30, 20);
                        content.fill();
                    }
                }
                PDOutlineItem item = new PDOutlineItem();
                item.setTitle("Part " + (i + 1));
                item.setDestination(page);
                outline.addLast(item);
            }
            PDAcroForm form = new PDAcroForm(document);
            document.getDocumentCatalog().setAcroForm(form);
            form.setSignaturesExist(true);
            PDSignatureField field = new PDSignatureField(form);
            PDSignature signature = new PDSignature();
            signature.setFilter(PDSignature.FILTER_ADOBE_PPKLITE);
            signature.setByteRange(new int[] {0, 10, 20, 30});
            signature.setContents(new byte[] {0});
            field.setValue(signature);
            form.getFields().add(field);
            document.getPage(1).getAnnotations().add(field.getWidgets().get(0));
            Path file = folder.resolve("signed.pdf");
            document.save(file.toFile());
            return file;
        }
    }

    @Test
    void ofASignedFileTheProofIsNotSignedAndSaysSo() throws Exception {
        Path signed = signedWithBookmarks();
        byte[] before = Files.readAllBytes(signed);
        ProofReport proof = proof(signed, Map.of(), false, null);
        assertThat(proof.outcome()).isEqualTo(Result.WRITTEN);
        assertThat(proof.comments()).isEqualTo(1);
        assertThat(proof.notes()).singleElement().asString().contains("signatures are taken out");
        assertThat(Files.readAllBytes(signed)).isEqualTo(before);
        try (PDDocument document = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            assertThat(document.getSignatureDictionaries()).isEmpty();
            // links to pages that are all there stay
            assertThat(document.getDocumentCatalog().getDocumentOutline().children())
                    .extracting(PDOutlineItem::getTitle)
                    .containsExactly("Part 1", "Part 2", "Part 3");
        }
    }

    @Test
    void flaggedPagesOfASignedFileKeepTheirLabelAndLoseTheBookmarks() throws Exception {
        ProofReport proof = proof(signedWithBookmarks(), Map.of(), true, null);
        assertThat(proof.pages()).containsExactly(2);
        try (PDDocument document = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(document.getDocumentCatalog().getDocumentOutline()).isNull();
            assertThat(document.getDocumentCatalog().getPageLabels().getLabelsByPageIndices())
                    .containsExactly("2");
            assertThat(document.getSignatureDictionaries()).isEmpty();
            assertThat(document.getPage(0).getAnnotations())
                    .extracting(PDAnnotation::getContents)
                    .anySatisfy(words -> assertThat(words).startsWith("The holes would cut drawn art"));
        }
    }
}
