package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.bindprep.files.PdfSource;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files taken in and files sent back, each with a sentence of its own. */
class IntakeTest {
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures");

    @TempDir
    Path folder;

    private static UnreadableInputException refusal(Path file, String password) {
        return catchThrowableOfType(
                UnreadableInputException.class,
                () -> Intake.open(new PdfSource(file, "client.pdf", password)).close());
    }

    @ParameterizedTest
    @CsvSource({
        "word-file.pdf, NOT_PDF, spreadsheet or slides file",
        "picture.pdf, NOT_PDF, picture",
        "empty.pdf, EMPTY, empty",
        "damaged.pdf, DAMAGED, breaks off",
        "locked.pdf, LOCKED, password",
        "missing.pdf, MISSING, no file",
        "'', NOT_A_FILE, folder",
    })
    void whatIsNoPdfSaysWhatItIs(String file, Reason reason, String words) {
        UnreadableInputException e = refusal(FIXTURES.resolve(file), null);
        assertThat(e.reason()).isEqualTo(reason);
        assertThat(e).hasMessageContaining(words).hasMessageContaining("client.pdf");
        assertThat(e.remedy()).isNotBlank().endsWith(".");
    }

    /** ISO 32000-1:2008, 7.5.2: a PDF begins with "%PDF-" and its version; one byte or two of it are wrong here. */
    @ParameterizedTest
    @ValueSource(strings = {"%PDx-1.4", "xPDF-1.4", "%xDF-1.4", "PDF-1.4", "%PFD-1.4", "%pdf-1.4", "\0\0\0\0\0\0\0\0"})
    void aDamagedHeaderIsToldAsThat(String header) throws Exception {
        byte[] bytes = Files.readAllBytes(FIXTURES.resolve("members-handbook-a4.pdf"));
        System.arraycopy(header.getBytes(StandardCharsets.ISO_8859_1), 0, bytes, 0, header.length());
        UnreadableInputException e = refusal(Files.write(folder.resolve("x.pdf"), bytes), null);
        assertThat(e.reason()).isEqualTo(Reason.DAMAGED);
        assertThat(e).hasMessageContaining("whose header is damaged").hasMessageNotContaining("type");
    }

    @Test
    void plainTextIsNoPdfWithADamagedHeader() throws Exception {
        Path text = Files.writeString(folder.resolve("x.pdf"), "%PDE 3.4 is software. Its startxref is unknown.\n");
        assertThat(refusal(text, null).reason()).isEqualTo(Reason.NOT_PDF);
    }

    @Test
    void opensOnceMoreOnlyWhatIsStillTheSame() throws Exception {
        Path file = Files.copy(FIXTURES.resolve("members-handbook-a4.pdf"), folder.resolve("book.pdf"));
        try (OpenedPdf first = Intake.open(new PdfSource(file, "client.pdf", null))) {
            try (OpenedPdf again = Intake.again(new PdfSource(file, "client.pdf", null), first)) {
                assertThat(again.facts()).isEqualTo(first.facts());
            }
            Files.writeString(file, "%", StandardOpenOption.APPEND);
            UnreadableInputException e = catchThrowableOfType(
                    UnreadableInputException.class,
                    () -> Intake.again(new PdfSource(file, "client.pdf", null), first)
                            .close());
            assertThat(e).hasMessage("client.pdf changed while it was read.");
            assertThat(e.reason()).isEqualTo(Reason.REFUSED);
        }
    }

    @Test
    void aLockedFileOpensWithItsPasswordOnly() throws Exception {
        Path locked = FIXTURES.resolve("locked.pdf");
        assertThat(refusal(locked, "wrong")).hasMessageContaining("does not open it");
        try (OpenedPdf pdf = Intake.open(new PdfSource(locked, "locked.pdf", "tide-table"))) {
            assertThat(pdf.facts().pages()).hasSize(2);
        }
        try (OpenedPdf pdf = Intake.open(new PdfSource(FIXTURES.resolve("owner-only.pdf"), "owner-only.pdf", null))) {
            assertThat(pdf.facts().pages()).hasSize(2);
            assertThat(pdf.facts().printable()).as("printing is allowed").isTrue();
        }
    }

    @Test
    void junkBeforeTheHeaderIsReadAndTold() throws Exception {
        try (OpenedPdf pdf = Intake.open(new PdfSource(FIXTURES.resolve("junk-before-header.pdf"), "junk.pdf", null))) {
            assertThat(pdf.facts().pages()).hasSize(2);
            assertThat(pdf.facts().bytesBeforeHeader()).isEqualTo(1000);
            assertThat(pdf.facts().repaired()).isFalse();
        }
    }

    @Test
    void theNameProvesNothing() throws Exception {
        Path named = folder.resolve("report.docx");
        Files.copy(FIXTURES.resolve("mixed-sizes.pdf"), named);
        try (OpenedPdf pdf = Intake.open(new PdfSource(named, "report.docx", null))) {
            assertThat(pdf.facts().pages()).hasSize(12);
        }
    }

    @Test
    void aWrongPointerIsRepairedAndTold() throws Exception {
        byte[] good = PageMaker.a4().draw("20 100 4 4 re f").bytes();
        String text = new String(good, StandardCharsets.ISO_8859_1);
        int at = text.lastIndexOf("startxref") + 10;
        byte[] bad = good.clone();
        Arrays.fill(bad, at, at + 2, (byte) '9');
        assertThat(open(good)).isFalse();
        assertThat(open(bad)).isTrue();
    }

    @Test
    void permissionsThatForbidPrintingAreTold() throws Exception {
        Path file = folder.resolve("view-only.pdf");
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            AccessPermission viewOnly = new AccessPermission();
            viewOnly.setCanPrint(false);
            StandardProtectionPolicy policy = new StandardProtectionPolicy("owner", "", viewOnly);
            policy.setEncryptionKeyLength(256);
            document.protect(policy);
            document.save(file.toFile());
        }
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "view-only.pdf", null))) {
            assertThat(pdf.facts().printable()).isFalse();
        }
    }

    private boolean open(byte[] bytes) throws Exception {
        Path file = Files.createTempFile(folder, "x", ".pdf");
        Files.write(file, bytes);
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "x.pdf", null))) {
            assertThat(pdf.facts().pages()).hasSize(1);
            return pdf.facts().repaired();
        }
    }

    @Test
    void aPageTreeThatLeadsBackIntoItselfEnds() {
        PageMaker maker = PageMaker.a4().with(page -> {
            COSDictionary tree = page.getCOSDictionary(COSName.PARENT);
            tree.setItem(COSName.KIDS, new COSArray(List.of(page, tree)));
            tree.setItem(COSName.COUNT, COSInteger.get(1_410_065_407));
        });
        try (OpenedPdf pdf = maker.open(folder)) {
            assertThat(pdf.facts().pages()).hasSize(1);
            assertThat(pdf.facts().lostPages()).isEqualTo(1);
        }
    }

    @Test
    void aContentStreamCutShortIsUnreadNotBlank() throws IOException {
        StringBuilder much = new StringBuilder();
        for (int i = 0; i < 4000; i++) {
            much.append(i * 7919 % 997).append(" 100 1 1 re f\n");
        }
        byte[] whole = PageMaker.a4().draw(much.toString()).bytes();
        String text = new String(whole, StandardCharsets.ISO_8859_1);
        int start = text.indexOf("stream\r\n", text.indexOf("/FlateDecode")) + 8;
        byte[] broken = whole.clone();
        Arrays.fill(broken, start + 600, start + 700, (byte) 0xff);
        Path file = folder.resolve("broken.pdf");
        Files.write(file, broken);
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "broken.pdf", null))) {
            assertThat(pdf.scan(1, io.bindprep.page.PageEdge.LEFT, 15).unchecked())
                    .isNotNull();
        } catch (UnreadableInputException e) {
            throw new AssertionError(e);
        }
    }
}
