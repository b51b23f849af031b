package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.check.Report;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.Raster;
import io.bindprep.proof.ProofReport;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ProofRequest;
import io.bindprep.request.ShiftRequest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pages whose unit is not 1/72 in (ISO 32000-1:2008, Table 30, UserUnit) beside the same pages in points: what is said of them
 * and, drawn by MuPDF, which minds the unit, what is made of them has to be the same in true millimetres.
 */
class UserUnitTest {
    private static final double POINTS = 72 / 25.4;

    @TempDir
    private Path folder;

    private Path plain;

    @BeforeEach
    void pointsAlone() throws IOException {
        plain = book(1);
    }

    /** Four leaves of A5 with 3 mm of bleed; a bar 6 mm from the binding edge of each, a tint in the middle. */
    private Path book(double unit) throws IOException {
        float mm = (float) (POINTS / unit);
        Path file = Files.createDirectories(folder.resolve("unit" + unit)).resolve("book.pdf");
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < 4; i++) {
                PDPage page = new PDPage(new PDRectangle(154 * mm, 216 * mm));
                page.setTrimBox(new PDRectangle(3 * mm, 3 * mm, 148 * mm, 210 * mm));
                page.getCOSObject().setFloat(COSName.USER_UNIT, (float) unit);
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    content.addRect((i % 2 == 0 ? 9 : 115) * mm, 100 * mm, 30 * mm, 10 * mm);
                    content.addRect(40 * mm, 20 * mm, 70 * mm, 60 * mm);
                    content.fill();
                }
            }
            document.save(file.toFile());
        }
        return file;
    }

    private static CheckRequest check(Path file) throws Exception {
        return new CheckRequest(file, "book.pdf", JobReader.toJob(JobSettings.of(Map.of())), null, (d, t) -> {});
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 10, 0.5})
    void sizesPaperAndHolesAreTrue(double unit) throws Exception {
        Report is = BindPrep.check(check(book(unit)));
        Report was = BindPrep.check(check(plain));
        assertThat(was.pages())
                .hasSize(4)
                .allSatisfy(
                        p -> assertThat(p.facts().across(PageEdge.LEFT).mm()).isBetween(147.99, 148.01));
        // the worst of four alike pages may be another by a rounding, and the digest of the file is another
        for (ReportFormat format : List.of(ReportFormat.TEXT, ReportFormat.JSON)) {
            assertThat(rounded(format.write(check(plain), is))).isEqualTo(rounded(format.write(check(plain), was)));
        }
    }

    private static String rounded(String report) {
        return report.replaceAll("\"(sha256|seen)\" : \"[0-9a-f]+\"", "")
                .replaceAll("[Pp]age [1-4]", "page N")
                .replaceAll("(\\d+\\.\\d)\\d*", "$1");
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 10})
    void whatIsWrittenIsTheSamePicture(double unit) throws Exception {
        assumeTrue(Raster.onPath("mutool"), "mutool is not installed");
        Path other = book(unit);
        assertAlike(shifted(plain), shifted(other));
        assertAlike(proofed(plain), proofed(other));
    }

    private Path shifted(Path file) throws Exception {
        Path out = file.resolveSibling("shifted.pdf");
        ShiftSettings settings =
                ShiftSettings.of(false, "6mm", null, null, false, false, false).marking(true);
        ShiftReport report = BindPrep.shift(new ShiftRequest(check(file), out, "shifted.pdf", settings));
        assertThat(report.outcome()).isEqualTo(ShiftReport.Result.CHANGED);
        return out;
    }

    private Path proofed(Path file) throws Exception {
        Path out = file.resolveSibling("proof.pdf");
        ProofReport report = BindPrep.proof(new ProofRequest(check(file), out, "proof.pdf", false));
        assertThat(report.outcome()).isEqualTo(ProofReport.Result.WRITTEN);
        return out;
    }

    private static void assertAlike(Path was, Path is) throws Exception {
        for (int page = 1; page <= 2; page++) {
            Raster a = Raster.ofMuPdf(was, page);
            Raster b = Raster.ofMuPdf(is, page);
            assertThat(a.dark()).isGreaterThan(1000);
            assertThat(b.unlike(a, 0, 0))
                    .as(String.format(Locale.ROOT, "%s, page %d", is, page))
                    .isZero();
        }
    }
}
