package io.bindprep.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TestSheetPdfTest {
    /** Twenty dots to the millimetre. */
    private static final int DPI = 508;

    private static final int DOTS = 20;

    @TempDir
    private Path temp;

    private static List<String> texts(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> texts = new ArrayList<>();
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                texts.add(stripper.getText(document).replaceAll("[\\s\\u00a0]+", " "));
            }
            return texts;
        }
    }

    private static boolean dark(BufferedImage image, int x, int y) {
        return (image.getRGB(x, y) & 0xFF) < 128;
    }

    /** Middles of the dark runs of a row of dots, millimetres. */
    private static List<Double> runs(BufferedImage image, double yMm) {
        List<Double> middles = new ArrayList<>();
        int y = (int) Math.round(yMm * DOTS);
        int start = -1;
        for (int x = 0; x < image.getWidth(); x++) {
            if (dark(image, x, y) && start < 0) {
                start = x;
            } else if (!dark(image, x, y) && start >= 0) {
                middles.add((start + x) / 2.0 / DOTS);
                start = -1;
            }
        }
        return middles;
    }

    @Test
    void aPageForEachSettingOneToReadOnAndGauges() throws Exception {
        List<String> pages = texts(Jobs.pdf(Jobs.of(Jobs.BENCH, Map.of())));
        assertThat(pages).hasSize(5);
        for (int i = 0; i < 3; i++) {
            String name = List.of("one", "two", "three").get(i);
            String centre = List.of("4.5 mm", "5.1 mm", "6.0 mm").get(i);
            assertThat(pages.get(i))
                    .contains("depth \"" + name + "\": holes " + centre)
                    .contains("SIDE GUIDE", "edge-first", "edge-last", "end-first", "row", "bar")
                    .contains("Punch waste first", "machine's manual", "trained people");
        }
        assertThat(pages.get(3)).contains("Reading page", "line 0", ".0", ".9");
        // a round hole has one size, in the units of the paper; gauges are to a tenth, what an element takes is rounded
        // down
        assertThat(texts(Jobs.pdf(Jobs.named(Map.of("binding", "coil", "trim", "letter"))))
                        .get(0))
                .contains("43 holes (round, 0.173 in)")
                .doesNotContain("4.4 x 4.4");
        assertThat(pages.get(4)).contains("4.8 mm, takes 2.3 mm").doesNotContain("4.76");
        // the 3:1 wires that are sold: 3/16 to 9/16 in
        assertThat(pages.get(4)).contains("3/16 in", "1/4 in", "5/16 in", "3/8 in", "7/16 in", "1/2 in", "9/16 in");
        assertThat(texts(Jobs.pdf(Jobs.of(Jobs.BENCH, Map.of("depth", "two"))))).hasSize(3);
    }

    /** 34 holes of 5/32 in at 1/3 in on A4, the first at 8.800 mm: to 0.1 mm where another program draws them. */
    @Test
    void popplerDrawsBoxesBarAndReadingLinesAtTrueSize() throws Exception {
        byte[] pdf = Jobs.pdf(Jobs.of(Jobs.BENCH, Map.of("depth", "two")));
        assertTrueSize(drawn(pdf, 1), drawn(pdf, 2));
    }

    @Test
    void pdfboxDrawsThemToo() throws Exception {
        try (PDDocument document = Loader.loadPDF(Jobs.pdf(Jobs.of(Jobs.BENCH, Map.of("depth", "two"))))) {
            PDFRenderer renderer = new PDFRenderer(document);
            assertTrueSize(renderer.renderImageWithDPI(0, DPI), renderer.renderImageWithDPI(1, DPI));
        }
    }

    private BufferedImage drawn(byte[] pdf, int page) throws Exception {
        Path file = Files.write(temp.resolve("sheet.pdf"), pdf);
        Process process;
        try {
            process = new ProcessBuilder(
                            "pdftoppm",
                            "-r",
                            "" + DPI,
                            "-gray",
                            "-png",
                            "-singlefile",
                            "-f",
                            "" + page,
                            file.toString(),
                            temp + "/page" + page)
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException e) {
            assumeThat(false).as("pdftoppm (Poppler) is on the PATH").isTrue();
            throw e;
        }
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return ImageIO.read(temp.resolve("page" + page + ".png").toFile());
    }

    private static void assertTrueSize(BufferedImage punched, BufferedImage reading) {
        // through the boxes between their crosses and their lower sides, and inside the scales at the ends
        List<Double> sides =
                runs(punched, 6.45).stream().filter(x -> x > 6.5 && x < 290.5).toList();
        assertThat(sides).hasSize(68);
        for (int hole = 0; hole < 34; hole++) {
            double left = sides.get(2 * hole);
            double right = sides.get(2 * hole + 1);
            assertThat((left + right) / 2).isCloseTo(8.8 + hole * 25.4 / 3, within(0.1));
            assertThat(right - left).isCloseTo(25.4 * 5 / 32, within(0.1));
        }
        // the marks of the bar, above its line: 0, 50, 100 ...
        List<Double> marks = runs(punched, 210 - 14 + 1);
        assertThat(marks.get(2) - marks.get(0)).isCloseTo(100, within(0.1));
        assertThat(marks.get(5) - marks.get(0)).isCloseTo(250, within(0.1));
        assertThat(reading.getWidth()).isEqualTo(punched.getWidth());
    }

    /** Figures smaller than 8 pt are hard to read at arm's length (from memory, no source). */
    @Test
    void figuresOfTheReadingPageCanBeRead() throws Exception {
        try (PDDocument document = Loader.loadPDF(Jobs.pdf(Jobs.of(Jobs.BENCH, Map.of("depth", "two"))))) {
            List<Float> sizes = new ArrayList<>();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition glyph) {
                    if (Character.isDigit(glyph.getUnicode().charAt(0)) && glyph.getYDirAdj() < 300) {
                        sizes.add(glyph.getFontSizeInPt());
                    }
                }
            };
            stripper.setStartPage(2);
            stripper.setEndPage(2);
            stripper.getText(document);
            assertThat(sizes).hasSizeGreaterThan(20).allMatch(size -> size >= 8);
        }
    }

    @Test
    void circlesAreTheElementsInnerDiameters() throws Exception {
        try (PDDocument document = Loader.loadPDF(Jobs.pdf(Jobs.of(Jobs.BENCH, Map.of("depth", "two"))))) {
            List<Double> diameters = PrintedPage.of(document, 3).boxes().stream()
                    .map(PrintedPage.Box::width)
                    .toList();
            // sixteenths of an inch: 3:1 wire from 3/16 to 9/16 in, then 2:1 from 1/4 to 1-1/4 in, as they are sold
            double[] sold = {3, 4, 5, 6, 7, 8, 9, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 20};
            assertThat(diameters).hasSize(sold.length);
            for (int i = 0; i < sold.length; i++) {
                assertThat(diameters.get(i)).isCloseTo(sold[i] * 25.4 / 16, within(0.001));
            }
        }
    }

    @Test
    void everyMethodHasItsElementsWithinThePages() throws Exception {
        for (String binding : List.of("wire", "coil", "comb", "rings")) {
            for (String trim : List.of("a4", "a5")) {
                Job job = Jobs.named(Map.of("binding", binding, "trim", trim));
                int settings = TestSheet.of(job).settings().size();
                byte[] pdf = Jobs.pdf(job);
                try (PDDocument document = Loader.loadPDF(pdf)) {
                    int circles = 0;
                    for (int page = 1; page <= document.getNumberOfPages(); page++) {
                        PrintedPage printed = PrintedPage.of(document, page);
                        for (PrintedPage.Box box : printed.boxes()) {
                            assertThat(box.x() > -0.01
                                            && box.y() > -0.01
                                            && box.x() + box.width() < printed.widthMm() + 0.01
                                            && box.y() + box.height() < printed.heightMm() - 14)
                                    .as(binding + " " + trim + " page " + page + " " + box)
                                    .isTrue();
                            circles += page > settings + 1 ? 1 : 0;
                        }
                    }
                    assertThat(circles)
                            .as(binding + " " + trim)
                            .isEqualTo(TestSheet.of(job).elements().size());
                }
            }
        }
    }

    @Test
    void whatIsLargerThanThePageIsSaid() throws Exception {
        byte[] pdf = Jobs.pdf(Jobs.named(Map.of("binding", "rings", "trim", "105 x 148 mm", "pitch", "R2m-ISO")));
        assertThat(String.join(" ", texts(pdf)))
                .contains("Larger than this page: 65 mm.", "Larger than this page: 3 in.")
                .contains("How to punch and read the test sheets");
    }

    @Test
    void everyPageIsTheJobsSizeAndPrintsAtFullSize() throws Exception {
        try (PDDocument document = Loader.loadPDF(Jobs.pdf(Jobs.of(Jobs.BENCH, Map.of("trim", "letter"))))) {
            for (PDPage page : document.getPages()) {
                // 11 x 8.5 in, the binding edge at the top
                assertThat(page.getMediaBox().getWidth()).isCloseTo(792, within(0.01f));
                assertThat(page.getMediaBox().getHeight()).isCloseTo(612, within(0.01f));
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                }
            }
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
        }
    }

    @Test
    void theSameSheetGivesTheSameBytesInAnyLocale() throws Exception {
        byte[] pdf = Jobs.pdf(Jobs.of(Jobs.BENCH, Map.of()));
        Locale before = Locale.getDefault();
        try {
            for (String locale : List.of("de-DE", "tr-TR", "ar-EG")) {
                Locale.setDefault(Locale.forLanguageTag(locale));
                assertThat(Jobs.pdf(Jobs.of(Jobs.BENCH, Map.of()))).isEqualTo(pdf);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "100 x 100 mm,left,too small to read",
        "200 x 60 mm,top,too small to read",
        "210 x 12 mm,left,fit",
    })
    void aSheetThatCannotBeReadIsRefused(String trim, String edge, String reason) {
        assertThatThrownBy(() -> TestSheet.of(Jobs.of(Jobs.BENCH, Map.of("trim", trim, "binding-edge", edge))))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining(reason);
    }
}
