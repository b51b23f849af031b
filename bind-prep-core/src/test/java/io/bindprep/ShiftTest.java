package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.files.PdfSource;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.Verdict;
import io.bindprep.page.Move;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.pdf.Raster;
import io.bindprep.problem.SettingException;
import io.bindprep.proof.ProofReport;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.ShiftReport.Result;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ProofRequest;
import io.bindprep.request.ShiftRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Repairs of whole files: how they were planted, fixtures/README.md says; how they look after, Poppler. */
class ShiftTest {
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures");

    @TempDir
    private Path folder;

    private ShiftReport shift(Path file, Map<String, String> job, ShiftSettings settings, String password)
            throws Exception {
        CheckRequest check = new CheckRequest(
                file, file.getFileName().toString(), JobReader.toJob(JobSettings.of(job)), password, (d, t) -> {});
        return BindPrep.shift(new ShiftRequest(check, folder.resolve("out.pdf"), "out.pdf", settings));
    }

    private ShiftReport shift(String fixture, Map<String, String> job, ShiftSettings settings) throws Exception {
        return shift(FIXTURES.resolve(fixture), job, settings, null);
    }

    private static ShiftSettings gutter(String length) throws Exception {
        return ShiftSettings.of(false, length, null, null, false, false, false);
    }

    private static ShiftSettings pageByPage() throws Exception {
        return ShiftSettings.of(true, null, null, null, false, false, false);
    }

    private static long pages(io.bindprep.check.Report report, Verdict verdict) {
        return report.pages().stream()
                .filter(p -> p.verdict().verdict() == verdict)
                .count();
    }

    private static List<PageFacts> facts(Path file) throws Exception {
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "x.pdf", null))) {
            return pdf.facts().pages();
        }
    }

    @Test
    void theCookbookMovesMirroredAndIsClear() throws Exception {
        byte[] input = Files.readAllBytes(FIXTURES.resolve("cookbook-letter.pdf"));
        ShiftReport r = shift("cookbook-letter.pdf", Map.of("pitch", "3:1"), ShiftSettings.builtIn());
        assertThat(r.outcome()).isEqualTo(Result.CHANGED);
        assertThat(pages(r.before(), Verdict.HIT)).isEqualTo(2);
        assertThat(pages(r.after(), Verdict.CLEAR)).isEqualTo(100);
        // page 14's text was measured at 2.98: to 9.525 it lacks 6.545
        assertThat(r.moves()).hasSize(100).allSatisfy(m -> {
            assertThat(m.awayMm()).isCloseTo(6.55, within(0.03));
            assertThat(m.scale()).isEqualTo(1);
        });
        assertThat(r.moves().get(13).bindingEdge()).isEqualTo(PageEdge.RIGHT);
        assertThat(r.moves().get(14).bindingEdge()).isEqualTo(PageEdge.LEFT);
        assertThat(r.because().get(0)).contains("Page 14", "Bones: run a thumb");
        assertThat(Files.readAllBytes(FIXTURES.resolve("cookbook-letter.pdf"))).isEqualTo(input);
        assertThat(facts(folder.resolve("out.pdf")))
                .as("boxes, turn and unit of every page")
                .isEqualTo(facts(FIXTURES.resolve("cookbook-letter.pdf")));
    }

    @Test
    void anotherRendererSeesTheSamePageMovedAndTheMarginFree() throws Exception {
        Path cookbook = FIXTURES.resolve("cookbook-letter.pdf");
        shift("cookbook-letter.pdf", Map.of("pitch", "3:1"), gutter("7 mm"));
        Path out = folder.resolve("out.pdf");
        for (int page : new int[] {14, 27, 40, 41, 100}) {
            PageEdge bound = page % 2 == 1 ? PageEdge.LEFT : PageEdge.RIGHT;
            int right = bound == PageEdge.LEFT ? 70 : -70;
            Raster was = Raster.ofPoppler(cookbook, page);
            Raster is = Raster.ofPoppler(out, page);
            assertThat(is.unlike(was, right, 0)).as("page " + page).isLessThan(was.dark() / 40 + 10);
            assertThat(is.ink(bound)).isCloseTo(was.ink(bound) + 7, within(0.11));
            assertThat(is.ink(bound)).as("page " + page).isGreaterThan(9.5);
        }
    }

    @Test
    void pageByPageLeavesTheOthersAlone() throws Exception {
        ShiftReport r = shift("cookbook-letter.pdf", Map.of("pitch", "3:1"), pageByPage());
        assertThat(IntStream.rangeClosed(1, 100)
                        .filter(p -> !r.moves().get(p - 1).nothing())
                        .boxed())
                .containsExactly(14, 27, 40, 41, 42, 43, 44);
        assertThat(r.moves().get(39).awayMm()).isCloseTo(1.03, within(0.03));
        assertThat(pages(r.after(), Verdict.CLEAR)).isEqualTo(100);
        Path cookbook = FIXTURES.resolve("cookbook-letter.pdf");
        assertThat(Raster.ofPoppler(folder.resolve("out.pdf"), 15).grey())
                .isEqualTo(Raster.ofPoppler(cookbook, 15).grey());
    }

    @Test
    void theCalendarMovesDownFromItsTop() throws Exception {
        ShiftReport r = shift(
                "calendar-a4-landscape.pdf", Map.of("binding-edge", "top", "sides", "one"), ShiftSettings.builtIn());
        assertThat(r.outcome()).isEqualTo(Result.CHANGED);
        // July's title was measured at 4.00
        assertThat(r.moves().get(7)).isEqualTo(new Move(PageEdge.TOP, 5.53, 1));
        Raster july = Raster.ofPoppler(folder.resolve("out.pdf"), 8);
        assertThat(july.ink(PageEdge.TOP)).isCloseTo(9.53, within(0.15));
    }

    /** fixtures/README.md: the tint covers 0 to 11.1 on every page, the picture of page 9 lies upon it from 3.97. */
    @Test
    void thePlannersTintStaysAndItsPictureMoves() throws Exception {
        ShiftReport r = shift("planner-a5.pdf", Map.of("trim", "a5"), ShiftSettings.builtIn());
        assertThat(r.outcome()).as(r.refusals() + "").isEqualTo(Result.CHANGED);
        assertThat(pages(r.after(), Verdict.CLEAR)).isEqualTo(16);
        assertThat(r.after().pages())
                .allSatisfy(p -> assertThat(p.verdict().background()).isTrue());
        assertThat(r.notes()).anyMatch(n -> n.contains("stays in its place") && n.contains("pages 1-16"));
        int right = (int) Math.round(r.moves().get(8).awayMm() * Raster.PER_MM);
        Raster was = Raster.ofPoppler(FIXTURES.resolve("planner-a5.pdf"), 9);
        Raster is = Raster.ofPoppler(folder.resolve("out.pdf"), 9);
        for (int y = 100; y < 2000; y += 50) {
            assertThat(is.at(10, y)).as("tint at " + y).isEqualTo(was.at(10, y));
            // the picture, 39.95 to 53.97 along, has come to lie over it
            if (y < 395 || y > 545) {
                assertThat(is.at(106, y)).as("the tint's far side at " + y).isEqualTo(was.at(106, y));
            }
        }
        // the middle of the picture, upright through its 14 mm
        for (int y = 410; y < 530; y += 10) {
            assertThat(is.at(65 + right, y)).as("picture at " + y).isCloseTo(was.at(65, y), within(40));
        }
    }

    @Test
    void aClearFileIsCopiedByteForByte() throws Exception {
        ShiftReport r = shift("members-handbook-a4.pdf", Map.of(), ShiftSettings.builtIn());
        assertThat(r.outcome()).isEqualTo(Result.COPIED);
        assertThat(folder.resolve("out.pdf")).hasSameBinaryContentAs(FIXTURES.resolve("members-handbook-a4.pdf"));
    }

    @Test
    void whatCannotBeRepairedIsRefusedAndTheOldOutputStays() throws Exception {
        Files.writeString(folder.resolve("out.pdf"), "old");
        ShiftReport r = shift(
                "cookbook-letter.pdf",
                Map.of("binding-margin", "40 mm"),
                ShiftSettings.of(false, null, "30 mm", "99", false, false, false));
        assertThat(r.outcome()).isEqualTo(Result.REFUSED);
        assertThat(r.refusals()).anyMatch(s -> s.contains("1.57 in required") && s.contains("minimum 99 %"));
        assertThat(folder.resolve("out.pdf")).hasContent("old");
    }

    @Test
    void aKeptPageStaysWithItsFindings() throws Exception {
        ShiftReport r = shift(
                "cookbook-letter.pdf", Map.of("pitch", "3:1"), pageByPage().keeping("14"));
        assertThat(r.outcome()).as(r.refusals() + "").isEqualTo(Result.CHANGED);
        assertThat(r.after().pages().get(13).verdict().verdict()).isEqualTo(Verdict.HIT);
        assertThat(pages(r.after(), Verdict.CLEAR)).isEqualTo(99);
        assertThat(r.notes()).anyMatch(n -> n.contains("Left as asked") && n.contains("page 14"));
        Raster was = Raster.ofPoppler(FIXTURES.resolve("cookbook-letter.pdf"), 14);
        assertThat(Raster.ofPoppler(folder.resolve("out.pdf"), 14).unlike(was, 0, 0))
                .isZero();
    }

    @Test
    void aKeptPageThatIsNotThereIsAWrongSetting() {
        assertThatThrownBy(() -> shift(
                        "cookbook-letter.pdf",
                        Map.of("pitch", "3:1"),
                        ShiftSettings.builtIn().keeping("1, 101")))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("100 pages");
        assertThatThrownBy(() -> ShiftSettings.builtIn().keeping("1;3")).isInstanceOf(SettingException.class);
    }

    @Test
    void aFileWithFewObjectsOfHighNumbersDoesNotGrowManyTimes() throws Exception {
        String one = Files.readString(pdf("", "", "13 100 20 5 re f"), StandardCharsets.ISO_8859_1);
        // the content's object gets the number 8000, in a table of two parts
        int at = one.indexOf("4 0 obj");
        assertThat(at).isPositive();
        String high = one.substring(0, one.indexOf("xref\n0 "))
                .replace("4 0 obj", "8000 0 obj")
                .replace("/Contents 4 0 R", "/Contents 8000 0 R");
        Path file = Files.writeString(folder.resolve("high.pdf"), table(high), StandardCharsets.ISO_8859_1);
        ShiftReport r = shift(file, Map.of(), gutter("6 mm"), null);
        assertThat(r.outcome()).isEqualTo(Result.CHANGED);
        assertThat(Files.size(folder.resolve("out.pdf"))).isLessThan(Files.size(file) + 2_000);
        assertThat(Raster.ofPoppler(folder.resolve("out.pdf"), 1).unlike(Raster.ofPoppler(file, 1), 60, 0))
                .isLessThan(10);
    }

    /** A body with a cross-reference table for the objects that it holds. */
    private static String table(String body) {
        StringBuilder xref = new StringBuilder("xref\n0 1\n0000000000 65535 f \n");
        Matcher object = Pattern.compile("(\\d+) 0 obj").matcher(body);
        while (object.find()) {
            xref.append(object.group(1)).append(" 1\n");
            xref.append(String.format(Locale.ROOT, "%010d 00000 n \n", object.start()));
        }
        return body + xref + "trailer << /Size 8001 /Root 1 0 R >>\nstartxref\n" + body.length() + "\n%%EOF\n";
    }

    /** Names as in ISO 19005-2:2011, 6.6.4 and ISO 15930-7:2010, 6.2, from memory. */
    @ParameterizedTest
    @ValueSource(strings = {"$1", "$1\0", "\0\0\0$1"})
    void aClaimedStandardIsSaidAndItsOutputIntentKept(String encoding) throws Exception {
        String plain =
                "<x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:Description pdfaid:part=\"2\" pdfaid:conformance=\"B\">"
                        + "<pdfxid:GTS_PDFXVersion>PDF/X-4</pdfxid:GTS_PDFXVersion></rdf:Description></x:xmpmeta>";
        String xmp = plain.replaceAll("(.)", encoding); // ISO 16684-1:2011, 7.3: UTF-8, UTF-16 or UTF-32
        Path file = pdf(
                "",
                "/Metadata 5 0 R /OutputIntents [<< /Type /OutputIntent /S /GTS_PDFX /OutputConditionIdentifier (FOGRA39) >>]",
                "13 100 20 5 re f",
                "<< /Type /Metadata /Subtype /XML /Length " + xmp.length() + " >> stream\n" + xmp + "\nendstream");
        ShiftReport r = shift(file, Map.of(), gutter("6 mm"), null);
        assertThat(r.notes()).anyMatch(n -> n.contains("PDF/A-2b and PDF/X-4"));
        try (PDDocument written = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            assertThat(written.getDocumentCatalog().getOutputIntents()).hasSize(1);
            assertThat(written.getDocumentCatalog().getMetadata()).isNotNull();
        }
        CheckRequest check = CheckRequest.of(file, "in.pdf", JobReader.toJob(JobSettings.of(Map.of())));
        ProofReport proof = BindPrep.proof(new ProofRequest(check, folder.resolve("proof.pdf"), "proof.pdf", false));
        assertThat(proof.notes()).anyMatch(n -> n.contains("PDF/A-2b") && n.contains("no such claim"));
        try (PDDocument written = Loader.loadPDF(folder.resolve("proof.pdf").toFile())) {
            assertThat(written.getDocumentCatalog().getOutputIntents()).hasSize(1);
            assertThat(written.getDocumentCatalog().getMetadata()).isNull();
        }
    }

    @Test
    void theInputIsNeverTheOutput() throws Exception {
        Path copy = Files.copy(FIXTURES.resolve("cookbook-letter.pdf"), folder.resolve("out.pdf"));
        byte[] bytes = Files.readAllBytes(copy);
        assertThatThrownBy(() -> shift(copy, Map.of(), gutter("2 mm"), null)).isInstanceOf(IOException.class);
        assertThat(Files.readAllBytes(copy)).isEqualTo(bytes);
    }

    @Test
    void aLockedFileIsWrittenUnlockedAndSaidSoButNotAgainstItsOwnersWill() throws Exception {
        String password = Files.readAllLines(FIXTURES.resolve("password.txt")).get(0);
        ShiftReport open = shift(FIXTURES.resolve("locked.pdf"), Map.of(), gutter("2 mm"), password);
        assertThat(open.outcome()).isEqualTo(Result.CHANGED);
        assertThat(open.notes()).anyMatch(n -> n.contains("encrypted"));
        assertThat(facts(folder.resolve("out.pdf"))).hasSize(2);
        ShiftReport refused = shift("owner-only.pdf", Map.of(), gutter("2 mm"));
        assertThat(refused.outcome()).isEqualTo(Result.REFUSED);
        assertThat(refused.refusals()).anyMatch(n -> n.contains("owner"));
    }

    /** A page whose content is given in millimetres; entries of page and catalogue as PDF text, objects from 5 on. */
    private Path pdf(String page, String catalog, String content, String... objects) throws IOException {
        StringBuilder pdf = new StringBuilder("%PDF-1.4\n");
        String drawn = "2.834645669 0 0 2.834645669 0 0 cm " + content;
        List<String> all = new java.util.ArrayList<>(List.of(
                "<< /Type /Catalog /Pages 2 0 R " + catalog + " >>",
                "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
                "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595.276 841.89] /Contents 4 0 R "
                        + (page.contains("/Resources") ? "" : "/Resources << >> ") + page + " >>",
                "<< /Length " + drawn.length() + " >> stream\n" + drawn + "\nendstream"));
        all.addAll(List.of(objects));
        StringBuilder table = new StringBuilder("xref\n0 " + (all.size() + 1) + "\n0000000000 65535 f \n");
        for (int i = 0; i < all.size(); i++) {
            table.append(String.format(Locale.ROOT, "%010d 00000 n \n", pdf.length()));
            pdf.append(i + 1).append(" 0 obj\n").append(all.get(i)).append("\nendobj\n");
        }
        int start = pdf.length();
        pdf.append(table)
                .append("trailer << /Size " + (all.size() + 1) + " /Root 1 0 R >>\nstartxref\n" + start + "\n%%EOF\n");
        return Files.write(folder.resolve("in.pdf"), pdf.toString().getBytes(StandardCharsets.ISO_8859_1));
    }

    @Test
    void aSignedFileIsRefusedUnlessAllowed() throws Exception {
        Path signed = pdf(
                "/Annots [5 0 R]",
                "/AcroForm << /Fields [5 0 R] /SigFlags 3 >>",
                "3 100 20 5 re f",
                "<< /Type /Annot /Subtype /Widget /FT /Sig /T (sign) /Rect [100 100 200 150] /V 6 0 R >>",
                "<< /Type /Sig /Filter /Adobe.PPKLite /ByteRange [0 10 20 30] /Contents <00> >>");
        ShiftReport refused = shift(signed, Map.of(), ShiftSettings.builtIn(), null);
        assertThat(refused.outcome()).isEqualTo(Result.REFUSED);
        assertThat(refused.refusals()).anyMatch(s -> s.contains("signed") && s.contains("allow-signed"));
        ShiftReport allowed =
                shift(signed, Map.of(), ShiftSettings.of(false, null, null, null, false, false, true), null);
        assertThat(allowed.outcome()).isEqualTo(Result.CHANGED);
        assertThat(allowed.notes()).anyMatch(s -> s.contains("signatures"));
        assertThat(Files.readString(folder.resolve("out.pdf"), StandardCharsets.ISO_8859_1))
                .doesNotContain("/ByteRange");
    }

    /** As a staff of music in one of the books that ends 0.007 mm beyond the page: seen cut, moved whole. */
    @Test
    void aLineThatEndsAHairBeyondTheBindingEdgeStaysCutThere() throws Exception {
        Path file = pdf("", "", "-0.007 100 60 0.2 re f");
        ShiftReport r = shift(file, Map.of(), ShiftSettings.builtIn(), null);
        assertThat(r.outcome()).as(r.refusals() + "").isEqualTo(Result.CHANGED);
        assertThat(pages(r.after(), Verdict.CLEAR)).isEqualTo(1);
        assertThat(r.notes()).anyMatch(n -> n.contains("runs off the binding edge"));
    }

    @Test
    void whatLayHiddenBeyondThePageDoesNotComeIn() throws Exception {
        // a bar 2 mm beyond the crop's left edge, as a neighbour of a cut spread would lie
        Path cropped = pdf("/CropBox [28.346 0 595.276 841.89]", "", "13 100 20 5 re f 2 50 6 100 re f");
        ShiftReport r = shift(cropped, Map.of(), ShiftSettings.builtIn(), null);
        assertThat(r.outcome()).isEqualTo(Result.CHANGED);
        assertThat(r.notes()).anyMatch(n -> n.contains("beyond the trim on page 1"));
        assertThat(Raster.ofPdfBox(Files.readAllBytes(folder.resolve("out.pdf")), 1)
                        .ink(PageEdge.LEFT))
                .isCloseTo(9.53, within(0.15));
    }

    @Test
    void withoutRoomItIsMadeSmallerAndStaysInside() throws Exception {
        Path wide = pdf("", "", "4 100 202 5 re f 4 20 5 250 re f");
        ShiftReport r = shift(wide, Map.of(), ShiftSettings.builtIn(), null);
        assertThat(r.outcome()).isEqualTo(Result.CHANGED);
        // outermost 4 from the edge is kept: (210 - 4 - 9.525) / (210 - 4 - 4) = 0.97264
        assertThat(r.moves().get(0).scale()).isEqualTo(0.9726);
        Raster is = Raster.ofPdfBox(Files.readAllBytes(folder.resolve("out.pdf")), 1);
        assertThat(is.ink(PageEdge.LEFT)).isCloseTo(9.53, within(0.15));
        assertThat(is.ink(PageEdge.RIGHT)).isCloseTo(4, within(0.15));
    }

    @Test
    void artThatRanOffTheHeadAndNoLongerDoesIsSaid() throws Exception {
        Path band = pdf("", "", "4 100 202 5 re f 60 280 60 17 re f");
        ShiftReport r = shift(band, Map.of(), ShiftSettings.builtIn(), null);
        assertThat(r.notes()).anyMatch(n -> n.contains("top edge") && n.contains("page 1"));
    }

    @Test
    void aOneSidedDocumentGetsBlankBacks() throws Exception {
        ShiftSettings blanks = ShiftSettings.of(false, null, null, null, true, false, false);
        ShiftReport r = shift(
                "calendar-a4-landscape.pdf",
                Map.of("binding-edge", "top", "covers", "front = page 1 on c1s-10pt"),
                blanks);
        assertThat(r.outcome()).isEqualTo(Result.CHANGED);
        assertThat(r.blanks()).hasSize(13);
        assertThat(r.after().pages()).hasSize(26);
        assertThat(pages(r.after(), Verdict.CLEAR)).isEqualTo(26);
        assertThat(r.after().block().leaves()).hasSameSizeAs(r.before().block().leaves());
        assertThat(Raster.ofPoppler(folder.resolve("out.pdf"), 16).dark()).isZero();
        assertThat(Raster.ofPoppler(folder.resolve("out.pdf"), 15).dark()).isPositive();
    }

    @Test
    void anOddBookIsPadded() throws Exception {
        ShiftSettings pad = ShiftSettings.of(false, null, null, null, false, true, false);
        ShiftReport r = shift("calendar-a4-landscape.pdf", Map.of("binding-edge", "top"), pad);
        assertThat(r.blanks()).containsExactly(13);
        assertThat(r.after().pages()).hasSize(14);
        assertThatThrownBy(() -> shift("calendar-a4-landscape.pdf", Map.of("sides", "one"), pad))
                .hasMessageContaining("one-sided");
    }

    @Test
    void linksStayOverTheirWords() throws Exception {
        assumeTrue(Raster.onPath("pdftotext"), "pdftotext (Poppler) is not installed");
        String at = "1 0 0 1 3 200 Tm";
        Path linked = pdf(
                "/Annots [5 0 R] /Resources << /Font << /F 6 0 R >> >>",
                "",
                "BT /F 5 Tf " + at + " (Harbour) Tj ET",
                "<< /Type /Annot /Subtype /Link /Rect [8.5 564 62 581] /Dest [3 0 R /XYZ 8.5 581 null] >>",
                "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>");
        double[] before = word(linked);
        ShiftReport r = shift(linked, Map.of(), ShiftSettings.builtIn(), null);
        assertThat(r.outcome()).isEqualTo(Result.CHANGED);
        double[] after = word(folder.resolve("out.pdf"));
        double moved = after[0] - before[0];
        assertThat(moved).isCloseTo(r.moves().get(0).awayMm() * 72 / 25.4, within(0.01));
        String out = Files.readString(folder.resolve("out.pdf"), StandardCharsets.ISO_8859_1);
        double[] rect = numbers(out, "/Rect");
        assertThat(rect[0]).isCloseTo(8.5 + moved, within(0.01));
        assertThat(rect[2]).isCloseTo(62 + moved, within(0.01));
        assertThat(numbers(out, "/XYZ")[0]).isCloseTo(8.5 + moved, within(0.01));
    }

    private static double[] numbers(String pdf, String after) {
        String rest = pdf.substring(pdf.indexOf(after) + after.length());
        return java.util.regex.Pattern.compile("-?\\d+(\\.\\d+)?")
                .matcher(rest)
                .results()
                .limit(4)
                .mapToDouble(m -> Double.parseDouble(m.group()))
                .toArray();
    }

    /** Place where Poppler finds the only word: xMin, yMin. */
    private static double[] word(Path file) throws Exception {
        Process process = new ProcessBuilder("pdftotext", "-bbox", file.toString(), "-").start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        return numbers(out, "<word");
    }

    @Test
    void theSameBytesInAnyLocaleAndTimeZone() throws Exception {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        shift("cookbook-letter.pdf", Map.of(), ShiftSettings.builtIn());
        byte[] first = Files.readAllBytes(folder.resolve("out.pdf"));
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            shift("cookbook-letter.pdf", Map.of(), ShiftSettings.builtIn());
            assertThat(Files.readAllBytes(folder.resolve("out.pdf"))).isEqualTo(first);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
