package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.Report;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.Raster;
import io.bindprep.repair.RefusalReason;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.ShiftReport.Result;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.report.html.HtmlReport;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ShiftRequest;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bleed made at the binding edge; what came of it Poppler and MuPDF draw. */
class ExtendBleedTest {
    private static final float MM = 72 / 25.4f;
    private static final float WIDTH = 150 * MM;
    private static final float HEIGHT = 200 * MM;
    private static final int BLEED_DOTS = 30;

    @TempDir
    private Path folder;

    private interface Art {
        void draw(PDPageContentStream content, PDDocument document) throws IOException;
    }

    private Path book(int rotate, PDRectangle trim, Art... pages) throws IOException {
        Path file = folder.resolve("in.pdf");
        try (PDDocument document = new PDDocument()) {
            for (Art art : pages) {
                PDPage page = new PDPage(new PDRectangle(WIDTH, HEIGHT));
                page.setRotation(rotate);
                if (trim != null) {
                    page.setTrimBox(trim);
                }
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    art.draw(content, document);
                }
            }
            document.save(file.toFile());
        }
        return file;
    }

    /** Coloured squares all over the page, no two places near each other alike, none as strong as lettering. */
    private static void picture(PDPageContentStream content, PDDocument document) throws IOException {
        BufferedImage squares = new BufferedImage(75, 100, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 100; y++) {
            for (int x = 0; x < 75; x++) {
                squares.setRGB(x, y, x * 3 << 16 | y * 2 << 8 | (x + y) % 2 * 60);
            }
        }
        content.drawImage(LosslessFactory.createFromImage(document, squares), 0, 0, WIDTH, HEIGHT);
    }

    private static Art tint(float wordsMm) {
        return (content, document) -> {
            content.setNonStrokingColor(0.4f, 0.1f, 0, 0.2f);
            content.addRect(0, 0, WIDTH, HEIGHT);
            content.fill();
            content.setNonStrokingColor(0f);
            content.beginText();
            content.setFont(new PDType1Font(FontName.HELVETICA), 9);
            content.newLineAtOffset(wordsMm * MM, 100 * MM);
            content.showText("words");
            content.endText();
        };
    }

    private ShiftRequest request(Path file, Map<String, String> job, ShiftSettings settings) throws Exception {
        CheckRequest check = CheckRequest.of(file, "in.pdf", JobReader.toJob(JobSettings.of(job)));
        return new ShiftRequest(check, folder.resolve("out.pdf"), "out.pdf", settings);
    }

    private ShiftReport extend(Path file, Map<String, String> job) throws Exception {
        return BindPrep.shift(request(file, job, ShiftSettings.builtIn().extendingBleed(true)));
    }

    private static Raster drawn(boolean poppler, Path file, int page) throws Exception {
        return poppler ? Raster.ofPoppler(file, page) : Raster.ofMuPdf(file, page);
    }

    /** Dots of the trimmed page that are like none of those around; renderers set pictures in whole dots. */
    private static int changed(Raster was, Raster is, PageEdge edge) {
        return is.astray(
                was,
                edge == PageEdge.LEFT ? is.width() - was.width() : 0,
                edge == PageEdge.TOP ? is.height() - was.height() : 0);
    }

    /** Dots of the bleed that are not what lies as far within the trim. */
    private static int unmirrored(Raster is, PageEdge edge) {
        int depth = edge.upright() ? is.width() : is.height();
        int length = edge.upright() ? is.height() : is.width();
        boolean first = edge == PageEdge.LEFT || edge == PageEdge.TOP;
        int unlike = 0;
        for (int along = 3; along < length - 3; along++) {
            for (int d = 2; d < BLEED_DOTS - 1; d++) {
                int out = first ? BLEED_DOTS - 1 - d : depth - BLEED_DOTS + d;
                int in = first ? BLEED_DOTS + d : depth - BLEED_DOTS - 1 - d;
                int a = edge.upright() ? is.at(out, along) : is.at(along, out);
                int b = edge.upright() ? is.at(in, along) : is.at(along, in);
                unlike += Math.abs(a - b) > 40 ? 1 : 0;
            }
        }
        return unlike;
    }

    @ParameterizedTest
    @CsvSource({"0, left, LEFT", "0, right, RIGHT", "90, top, TOP", "270, top, TOP", "180, left, LEFT"})
    void aPictureIsMirroredAndNothingWithinTheTrimChanges(int rotate, String bound, PageEdge edge) throws Exception {
        Path file = book(rotate, null, ExtendBleedTest::picture);
        ShiftReport made = extend(file, Map.of("binding-edge", bound));
        assertThat(made.outcome()).as(made.refusals() + "").isEqualTo(Result.CHANGED);
        assertThat(made.bleeds()).containsExactly(1);
        assertThat(made.notes()).anyMatch(n -> n.contains("mirrored to 3.0 mm beyond the trim"));
        PageFacts was = made.before().pages().get(0).facts();
        PageFacts is = made.after().pages().get(0).facts();
        assertThat(is.trim()).isEqualTo(was.trim());
        assertThat(is.bleed().contains(was.beyond(edge, 3), 0.01)).isTrue();
        assertThat(is.media().contains(is.bleed(), 0.01)).isTrue();
        for (boolean poppler : new boolean[] {true, false}) {
            Raster before = drawn(poppler, file, 1);
            Raster after = drawn(poppler, folder.resolve("out.pdf"), 1);
            assertThat(edge.upright() ? after.width() - before.width() : after.height() - before.height())
                    .isBetween(BLEED_DOTS - 1, BLEED_DOTS + 1);
            assertThat(changed(before, after, edge)).isZero();
            int dots = BLEED_DOTS * (edge.upright() ? before.height() : before.width());
            // interpolation makes a square's border a dot wide
            assertThat(unmirrored(after, edge))
                    .as(poppler ? "Poppler" : "MuPDF")
                    .isLessThan(dots / 20);
        }
    }

    @Test
    void eachPageIsExtendedAtItsOwnBoundEdgeAndOneWithoutArtIsNot() throws Exception {
        Path file = book(0, null, ExtendBleedTest::picture, ExtendBleedTest::picture, (c, d) -> {});
        ShiftReport made = extend(file, Map.of());
        assertThat(made.bleeds()).containsExactly(1, 2);
        Raster verso = drawn(true, folder.resolve("out.pdf"), 2);
        assertThat(changed(drawn(true, file, 2), verso, PageEdge.RIGHT)).isZero();
        assertThat(made.after().pages().get(2).facts())
                .isEqualTo(made.before().pages().get(2).facts());
    }

    @Test
    void bleedThatIsTooShortIsMadeLonger() throws Exception {
        PDRectangle trim = new PDRectangle(MM, 3 * MM, WIDTH - 4 * MM, HEIGHT - 6 * MM);
        Path file = book(0, trim, ExtendBleedTest::picture);
        ShiftReport made = extend(file, Map.of());
        assertThat(made.before().findings()).anyMatch(f -> f.rule().equals("bleed-short"));
        assertThat(made.bleeds()).containsExactly(1);
        assertThat(made.after().findings()).noneMatch(f -> f.rule().equals("bleed-short"));
        Raster before = drawn(false, file, 1);
        Raster after = drawn(false, folder.resolve("out.pdf"), 1);
        assertThat(after.width() - before.width()).isEqualTo(20);
        assertThat(changed(before, after, PageEdge.LEFT)).isZero();
    }

    /** ISO 15930-7:2010, 6.5: a page has a TrimBox or an ArtBox, not both. From memory. */
    @Test
    void aPageKeepsOneOfTrimBoxAndArtBox() throws Exception {
        Path file = book(0, null, tint(40));
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
            PDPage page = document.getPage(0);
            page.setArtBox(page.getMediaBox());
            document.save(file.toFile());
        }
        assertThat(extend(file, Map.of()).bleeds()).containsExactly(1);
        try (PDDocument document = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            assertThat(document.getPage(0).getCOSObject().containsKey(COSName.TRIM_BOX))
                    .isTrue();
            assertThat(document.getPage(0).getCOSObject().containsKey(COSName.ART_BOX))
                    .isFalse();
        }
    }

    /** The trim in the middle of a dot, which each of two edges that meet there fills by half: a quarter of it was paper. */
    @Test
    void noHairOfPaperShowsAtTheTrim() throws Exception {
        ShiftReport made = extend(book(0, null, tint(40)), Map.of("bleed", "3.05 mm"));
        assertThat(made.bleeds()).containsExactly(1);
        for (boolean poppler : new boolean[] {true, false}) {
            Raster after = drawn(poppler, folder.resolve("out.pdf"), 1);
            for (int y = 3; y < after.height() - 3; y++) {
                for (int x = BLEED_DOTS - 3; x < BLEED_DOTS + 4; x++) {
                    assertThat(Math.abs(after.at(x, y) - after.at(60, 20)))
                            .as("Poppler %s, %d, %d", poppler, x, y)
                            .isLessThan(8);
                }
            }
        }
    }

    /** Art that is not opaque would show made bleed beneath it: there the edges only meet. */
    @Test
    void nothingIsPutUnderArtThatIsSeenThrough() throws Exception {
        Art seenThrough = (content, document) -> {
            PDExtendedGraphicsState half = new PDExtendedGraphicsState();
            half.setNonStrokingAlphaConstant(0.5f);
            content.setGraphicsStateParameters(half);
            tint(40).draw(content, document);
        };
        Path file = book(0, null, seenThrough);
        ShiftReport made = extend(file, Map.of());
        assertThat(made.bleeds()).containsExactly(1);
        assertThat(changed(drawn(true, file, 1), drawn(true, folder.resolve("out.pdf"), 1), PageEdge.LEFT))
                .isZero();
    }

    @Test
    void wordsMoveAndTheTintGoesOnWithoutThem() throws Exception {
        ShiftReport made = extend(book(0, null, tint(2)), Map.of());
        assertThat(made.outcome()).as(made.refusals() + "").isEqualTo(Result.CHANGED);
        assertThat(made.moves().get(0).nothing()).isFalse();
        assertThat(made.bleeds()).containsExactly(1);
        Raster after = drawn(true, folder.resolve("out.pdf"), 1);
        for (int y = 3; y < after.height() - 3; y++) {
            assertThat(Math.abs(after.at(10, y) - after.at(45, 20)))
                    .as("plain tint")
                    .isLessThan(3);
        }
    }

    @Test
    void whatWordsAtTheEdgeLeaveNothingOfIsRefusedWithItsReason() throws Exception {
        ShiftSettings little = ShiftSettings.of(false, "0.2 mm", null, null, false, false, false)
                .extendingBleed(true);
        ShiftReport made = BindPrep.shift(request(book(0, null, tint(0.3f)), Map.of(), little));
        assertThat(made.outcome()).isEqualTo(Result.REFUSED);
        assertThat(made.reasons()).containsExactly(RefusalReason.NO_BLEED);
        assertThat(folder.resolve("out.pdf")).doesNotExist();
    }

    @Test
    void nothingIsAddedWhereNoneIsMissing() throws Exception {
        Path file = book(0, new PDRectangle(3 * MM, 3 * MM, WIDTH - 6 * MM, HEIGHT - 6 * MM), ExtendBleedTest::picture);
        ShiftReport made = extend(file, Map.of());
        assertThat(made.outcome()).isEqualTo(Result.COPIED);
        assertThat(made.notes()).anyMatch(n -> n.contains("No bleed is missing"));
        assertThat(folder.resolve("out.pdf")).hasSameBinaryContentAs(file);
    }

    @Test
    void theHtmlReportShowsTheBleedBeforeAndAfter() throws Exception {
        Path file = book(0, null, ExtendBleedTest::picture);
        ShiftRequest request = request(file, Map.of(), ShiftSettings.builtIn().extendingBleed(true));
        ShiftReport made = BindPrep.shift(request);
        String html = HtmlReport.write(made, BindPrep.pictures(request, made));
        assertThat(html).contains("class=\"trim\"").contains("bleed made on 1 page");
        Report after = made.after();
        assertThat(after).isNotNull();
    }
}
