package io.bindprep.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.job.Order;
import io.bindprep.problem.SettingException;
import io.bindprep.report.words.Sentences;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.Pile;
import io.bindprep.request.PlanRequest;
import io.bindprep.run.Step;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetPdfTest {
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root")).resolve("fixtures");

    /** Ten dots to the millimetre. */
    private static final int DPI = 254;

    private static Report handbook;
    private static Report cookbook;

    @TempDir
    private Path temp;

    @BeforeAll
    static void check() throws Exception {
        handbook = report("members-handbook-a4.pdf", Map.of("stock", "bond-20"));
        cookbook = report("cookbook-letter.pdf", Map.of("stock", "offset-60", "copies", 40));
    }

    private static Report report(String file, Map<String, Object> job) throws Exception {
        return BindPrep.check(CheckRequest.of(FIXTURES.resolve(file), file, JobReader.toJob(JobSettings.of(job))));
    }

    private static byte[] pdf(JobSheet sheet, SheetPaper paper) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetPdf.write(sheet, paper, out);
        return out.toByteArray();
    }

    private static BufferedImage firstPage(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, DPI);
        }
    }

    private static boolean dark(BufferedImage image, int x, int y) {
        return (image.getRGB(x, y) & 0xFF) < 128;
    }

    /** Middles of the dark runs of a row of dots. */
    private static List<Double> runs(BufferedImage image, int y) {
        List<Double> middles = new ArrayList<>();
        int start = -1;
        for (int x = 0; x < image.getWidth(); x++) {
            if (dark(image, x, y) && start < 0) {
                start = x;
            } else if (!dark(image, x, y) && start >= 0) {
                middles.add((start + x - 1) / 2.0);
                start = -1;
            }
        }
        return middles;
    }

    private static int longestRun(BufferedImage image, int y) {
        int longest = 0;
        int run = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            run = dark(image, x, y) ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    /**
     * On A4 the row of 34 holes starts 8.800 mm from the head at a pitch of 1/3 in (XJDF 2.2 F.10 and German Wikipedia
     * "Drahtkammbindung"; the first centre derived): read back from the dots, as a sheet laid on it would be.
     */
    private static void assertTrueSize(BufferedImage image) {
        List<Double> sides = List.of();
        for (int y = 0; y < image.getHeight() && sides.size() != 2 * 17 + 2; y++) {
            sides = holeSides(image, y);
        }
        assertThat(sides)
                .as("a row of dots through the sides of 17 holes and both ends of the piece")
                .hasSize(36);
        double end = sides.get(0);
        for (int hole = 0; hole < 17; hole++) {
            double centre = (sides.get(1 + 2 * hole) + sides.get(2 + 2 * hole)) / 2;
            assertThat((centre - end) / 10).isCloseTo(8.8 + hole * 25.4 / 3, within(0.15));
        }
        long bars = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            // with half of the end strokes of 0.4 mm at either end
            bars += Math.abs(longestRun(image, y) - 1002) <= 3 ? 1 : 0;
        }
        assertThat(bars).as("rows of dots through the bar of 100 mm").isBetween(2L, 8L);
    }

    // the guide's bar, the end of the sheet, two sides of each hole, the break: told from a row of print by the holes'
    // size
    private static List<Double> holeSides(BufferedImage image, int y) {
        List<Double> all = runs(image, y);
        if (all.size() != 37) {
            return List.of();
        }
        List<Double> sides = all.subList(1, 37);
        for (int hole = 0; hole < 17; hole++) {
            double size = sides.get(2 + 2 * hole) - sides.get(1 + 2 * hole);
            if (Math.abs(size - 25.4 * 5 / 32 * 10) > 2) {
                return List.of();
            }
        }
        return sides;
    }

    @Test
    void theEdgeIsDrawnAtTrueSize() throws Exception {
        assertTrueSize(firstPage(pdf(JobSheet.of(handbook), SheetPaper.A4)));
    }

    @Test
    void popplerDrawsItAtTrueSizeToo() throws Exception {
        Path file = Files.write(temp.resolve("sheet.pdf"), pdf(JobSheet.of(handbook), SheetPaper.A4));
        Process process;
        try {
            process = new ProcessBuilder(
                            "pdftoppm",
                            "-r",
                            "" + DPI,
                            "-png",
                            "-singlefile",
                            "-f",
                            "1",
                            file.toString(),
                            temp + "/sheet")
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException e) {
            assumeThat(false).as("pdftoppm (Poppler) is on the PATH").isTrue();
            return;
        }
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertTrueSize(ImageIO.read(temp.resolve("sheet.png").toFile()));
    }

    /** A cut of 60 x 20 mm in the middle of a top edge of 297 mm, which is drawn in two pieces of 148.5 (derived). */
    @Test
    void theThumbCutIsDrawnAtTrueSize() throws Exception {
        Map<String, Object> job = Map.of(
                "binding-edge", "top", "sides", "one", "hanger", Map.of("gap", "90 mm", "thumb-cut", "60 x 20 mm"));
        Report calendar = report("calendar-a4-landscape.pdf", job);
        BufferedImage image = firstPage(pdf(JobSheet.of(calendar), SheetPaper.A4));
        // to the cut 118.5 mm of edge are left, of which each end is half a hairline longer
        int edge = 0;
        while (Math.abs(longestRun(image, edge) - 1185) > 6) {
            edge++;
        }
        // below the words at the side guide: its bar, then the end of the sheet
        List<Double> ends = runs(image, edge + 150);
        double left = ends.get(1);
        for (int down : new int[] {40, 100, 150}) {
            // x^2 / 30^2 + y^2 / 20^2 = 1
            double expected = 1485 - 300 * Math.sqrt(1 - down * down / 40000.0);
            assertThat(runs(image, edge + 2 + down))
                    .as("%s tenths of a millimetre down", down)
                    .anyMatch(x -> Math.abs(x - left - expected) <= 3);
        }
        assertThat(text(pdf(JobSheet.of(calendar), SheetPaper.A4))).contains("thumb cut 60 x 20 mm");
    }

    @Test
    void theCodeHoldsTheDigestsOfDocumentAndJob() throws Exception {
        JobSheet sheet = JobSheet.of(handbook);
        BufferedImage image = firstPage(pdf(sheet, SheetPaper.A4));
        int[] dots = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        LuminanceSource light = new RGBLuminanceSource(image.getWidth(), image.getHeight(), dots);
        // zxing reads the dots, not our module grid
        String read = new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(light)))
                .getText();
        assertThat(read).contains("sha256=" + handbook.document().sha256()).contains("job=" + sheet.jobId());
        assertThat(JobSheet.of(cookbook).jobId()).isNotEqualTo(sheet.jobId());
    }

    @Test
    void aDocumentThatLosesTextSaysSoFirst() throws Exception {
        String bad = text(pdf(JobSheet.of(cookbook), SheetPaper.LETTER));
        assertThat(bad.indexOf("DO NOT PRINT")).isBetween(0, bad.indexOf("SETTINGS"));
        assertThat(bad).contains("ERROR Page 14:").doesNotContain("GOOD TO PRINT");
        assertThat(text(pdf(JobSheet.of(handbook), SheetPaper.A4)))
                .contains("GOOD TO PRINT AND BIND")
                .doesNotContain("DO NOT PRINT");
    }

    @ParameterizedTest
    @MethodSource("sheetsOfEveryMethod")
    void pageOneHoldsAllToSetAndDoWithItsCautions(String file, SheetPaper paper, Map<String, Object> job)
            throws Exception {
        JobSheet sheet = JobSheet.of(report(file, job));
        byte[] pdf = pdf(sheet, paper);
        assertDisjoint(pdf);
        String page = flat(page(pdf, 1));
        assertThat(sheet.cautions())
                .isNotEmpty()
                .allSatisfy(c -> assertThat(page).contains(flat(c)));
        assertThat(sheet.parts().get(0).steps())
                .isNotEmpty()
                .allSatisfy(step -> assertThat(Sentences.of(step))
                        .allSatisfy(i -> assertThat(page).contains(flat(i))));
        assertThat(sheet.parts().get(0).settings())
                .allSatisfy(setting -> assertThat(page).contains(flat(setting.label()), flat(setting.value())));
        assertThat(page)
                .contains(
                        sheet.copies() > 16
                                ? "Tally of " + sheet.copies()
                                : "a box for every copy".toUpperCase(Locale.ROOT));
        assertThat(flat(page(pdf, 2))).startsWith(flat(sheet.title()) + " BEFORE THE PUNCH");
    }

    static Stream<Arguments> sheetsOfEveryMethod() {
        String handbook = "members-handbook-a4.pdf";
        String cookbook = "cookbook-letter.pdf";
        String calendar = "calendar-a4-landscape.pdf";
        Map<String, Object> covers = Map.of("front", "c1s-10pt", "back", "c1s-10pt");
        return Stream.of(
                Arguments.of(handbook, SheetPaper.A4, Map.of("stock", "bond-20", "copies", 3)),
                Arguments.of(handbook, SheetPaper.A4, Map.of("binding", "coil", "stock", "bond-20")),
                Arguments.of(handbook, SheetPaper.LETTER, Map.of("binding", "rings", "stock", "bond-20")),
                Arguments.of(
                        handbook,
                        SheetPaper.A4,
                        Map.of("stock", "bond-20", "tabs", "before 5, 9 on tag-150", "covers", covers, "copies", 20)),
                Arguments.of(
                        cookbook, SheetPaper.LETTER, Map.of("binding", "comb", "stock", "offset-60", "copies", 12)),
                Arguments.of(cookbook, SheetPaper.LETTER, Map.of("binding", "rings", "stock", "bond-20")),
                Arguments.of(
                        cookbook, SheetPaper.LETTER, Map.of("stock", "offset-60", "covers", covers, "copies", 250)),
                Arguments.of(
                        calendar, SheetPaper.A4, Map.of("binding-edge", "top", "sides", "one", "hanger", "90 mm")));
    }

    /** Thick books have many lifts; boxes give way to a tally and closer print before the steps leave the page. */
    @ParameterizedTest
    @CsvSource({
        "a4, wire, 150, 12, A4",
        "a4, rings, 250, 4, A4",
        "letter, comb, 200, 5, LETTER",
        "letter, coil, 300, 250, LETTER",
        "a4, comb, 380, 1, A4"
    })
    void manyLiftsLeaveRoomForTheSteps(String trim, String binding, int leaves, int copies, SheetPaper paper)
            throws Exception {
        Map<String, Object> job =
                Map.of("trim", trim, "binding", binding, "copies", copies, "covers", Map.of("back", "coverboard-30"));
        JobSheet sheet = JobSheet.of(
                BindPrep.plan(new PlanRequest("p", JobReader.toJob(JobSettings.of(job)), Pile.ofLeaves(leaves))));
        assertThat(sheet.parts()).hasSize(1);
        byte[] pdf = pdf(sheet, paper);
        assertDisjoint(pdf);
        String page = flat(page(pdf, 1));
        assertThat(sheet.parts().get(0).steps())
                .allSatisfy(step -> assertThat(Sentences.of(step))
                        .allSatisfy(i -> assertThat(page).contains(flat(i))));
        assertThat(sheet.parts().get(0).lifts())
                .allSatisfy(lift -> assertThat(page).contains(flat(lift)));
    }

    /** Each volume has a page of its own: its pages named, its settings, lifts, strokes and steps. */
    @Test
    void eachVolumeHasItsPageWithItsOwnWork() throws Exception {
        Job job = JobReader.toJob(JobSettings.of(Map.of("trim", "a4", "copies", 250)));
        JobSheet sheet = JobSheet.of(BindPrep.plan(new PlanRequest("p", job, Pile.ofPages(1400))));
        byte[] pdf = pdf(sheet, SheetPaper.A4);
        // the same pages as the finding names
        assertThat(sheet.faults().get(0)).contains("3 volumes (pages 1-466, 467-934, 935-1400)");
        List<String> pages = List.of("1-466", "467-934", "935-1400");
        for (int volume = 1; volume <= 3; volume++) {
            JobSheet.VolumeSettings part = sheet.parts().get(volume - 1);
            String page = flat(page(pdf, volume));
            assertThat(page)
                    .contains("VOLUME " + volume + " OF 3, PAGES " + pages.get(volume - 1) + ": SETTINGS")
                    .contains(part.strokes() + " STROKES FOR THIS VOLUME", "AT THE PUNCH, IN THIS ORDER");
            assertThat(part.strokes()).isEqualTo(250L * part.lifts().size());
            assertThat(part.steps())
                    .allSatisfy(step -> assertThat(Sentences.of(step))
                            .allSatisfy(i -> assertThat(page).contains(flat(i))));
            // the run is packed once, with the last volume
            assertThat(part.steps().stream().anyMatch(s -> s.work() == Step.Work.PACK))
                    .isEqualTo(volume == 3);
        }
        assertThat(sheet.parts().stream()
                        .mapToLong(JobSheet.VolumeSettings::strokes)
                        .sum())
                .isEqualTo(250L
                        * sheet.parts().stream().mapToInt(p -> p.lifts().size()).sum());
        assertThat(page(pdf, 4)).contains("BEFORE THE PUNCH");
    }

    /** A hand sets 1/32 in; the dial's own name stands as large, be it a number. */
    @Test
    void settingsAreToWhatAHandCanSet() throws Exception {
        JobSheet coil = JobSheet.of(report("cookbook-letter.pdf", Map.of("binding", "coil")));
        assertThat(coil.parts().get(0).settings())
                .allSatisfy(s -> assertThat(s.value()).doesNotMatch("0\\.\\d+ in"))
                .allSatisfy(s -> assertThat(s.note()).doesNotContain("finer scale 1/"));
        JobSettings settings = JobSettings.of(Map.of("punch", "shop-punch.yaml"));
        Job shop = JobReader.toJob(
                settings, JobFiles.read(settings, (file, beside) -> Files.readString(FIXTURES.resolve(file))));
        JobSheet own = JobSheet.of(BindPrep.check(
                CheckRequest.of(FIXTURES.resolve("members-handbook-a4.pdf"), "members-handbook-a4.pdf", shop)));
        assertThat(own.parts().get(0).settings())
                .anySatisfy(s -> assertThat(s).extracting("label", "value").containsExactly("Depth dial", "1"));
        JobSheet given = JobSheet.of(report("members-handbook-a4.pdf", Map.of("depth", "5 mm")));
        assertThat(given.parts().get(0).settings())
                .noneMatch(s -> s.label().equals("Depth dial"))
                .anySatisfy(s -> assertThat(s.value() + ": " + s.note()).startsWith("5 mm: paper outside the hole"));
        JobSheet wire = JobSheet.of(cookbook);
        assertThat(wire.parts().get(0).settings())
                .anySatisfy(s -> assertThat(s)
                        .extracting("label", "value", "note")
                        .containsExactly("Closer", "3/8 in", "as the element"));
    }

    /** A book of three volumes has steps that come after the last; what can hurt someone stands before them all. */
    @Test
    void cautionsOfVolumesStandOnPageOne() throws Exception {
        JobSheet sheet = JobSheet.of(report("cookbook-letter.pdf", Map.of("stock", "coverboard-48", "copies", 2)));
        assertThat(sheet.parts()).hasSize(3);
        String page = flat(page(pdf(sheet, SheetPaper.LETTER), 1));
        assertThat(sheet.cautions()).allSatisfy(c -> assertThat(page).contains(flat(c)));
        assertThat(Sentences.of(sheet.parts().get(0).steps().get(1)))
                .satisfiesExactly(
                        lifts -> assertThat(lifts).startsWith("17 lifts per copy, in order: 17 x 1 board leaf"),
                        strokes -> assertThat(strokes).isEqualTo("34 strokes for 2 copies of this volume."));
    }

    @Test
    void theAnswerIsSaidOnce() throws Exception {
        String bad = page(pdf(JobSheet.of(cookbook), SheetPaper.LETTER), 1);
        assertThat(bad).contains("DO NOT PRINT").doesNotContain("Do not print").contains("cut content on 2 pages.");
        Report plan = BindPrep.plan(
                new PlanRequest("p", JobReader.toJob(JobSettings.of(Map.of("trim", "a4"))), Pile.ofLeaves(40)));
        assertThat(JobSheet.of(plan).answer()).isEqualTo("Plan only");
        assertThat(JobSheet.of(plan).grounds())
                .startsWith("No PDF was checked.")
                .doesNotContain("Plan only");
    }

    /** Letter is drawn in inches: no millimetre stands on its sheet but an element's that is sold by them. */
    @Test
    void aSheetKeepsToTheUnitsOfItsPaper() throws Exception {
        String letter = flat(text(pdf(JobSheet.of(cookbook), SheetPaper.LETTER)));
        assertThat(letter).doesNotContainPattern("[0-9] (?:mm|um|g|kg)\\b");
        assertThat(letter)
                .contains(
                        "4.7 mil per sheet",
                        "This bar is 4 in long",
                        "3:1 deep 0.24 in",
                        "3:1 shallow (chosen) 0.20 in",
                        "23.6 lb");
        String a4 = flat(page(pdf(JobSheet.of(handbook), SheetPaper.A4), 1));
        assertThat(a4)
                .contains("8 Closer 3/16 in as the element", "on a finer scale 5.1 mm")
                .doesNotContain("5.08 mm", "4.76 mm");
    }

    @Test
    void noPrintIsTooSmallToRead() throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf(JobSheet.of(cookbook), SheetPaper.A4))) {
            new PDFTextStripper() {
                private boolean why;

                @Override
                protected void writeString(String text, List<TextPosition> glyphs) {
                    why |= text.equals("WHY");
                    // the numbers at the drawing are the smallest, the feet are smaller than the reasons
                    boolean foot = glyphs.get(0).getYDirAdj() > 800;
                    assertThat(glyphs.get(0).getYScale()).as(text).isGreaterThanOrEqualTo(why && !foot ? 7.49f : 6.49f);
                }
            }.getText(document);
        }
    }

    /** A comb's middle hole and the middle ring hole lie on half of the edge, where it would break. */
    @Test
    void theEdgeBreaksBetweenHoles() throws Exception {
        for (String method : List.of("comb", "rings", "wire", "coil")) {
            Map<String, Object> job = Map.of("binding", method, "trim", "letter", "stock", "bond-20");
            Report plan = BindPrep.plan(new PlanRequest("p", JobReader.toJob(JobSettings.of(job)), Pile.ofLeaves(40)));
            EdgePainter painter =
                    new EdgePainter(JobSheet.of(plan).parts().get(0).edge(), 190);
            List<Integer> crosses = new ArrayList<>();
            for (int piece = 0; piece < painter.pieces(); piece++) {
                SvgPen pen = new SvgPen();
                painter.paint(pen, piece, 0, 0);
                crosses.add(pen.elements().split("<circle|<ellipse|<rect", -1).length - 1);
            }
            // the bar of the side guide is a box too
            assertThat(crosses.stream().mapToInt(i -> i).sum())
                    .as(method)
                    .isEqualTo(plan.plan().row().holes().size() + 1);
        }
    }

    private static String page(byte[] pdf, int number) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(number);
            stripper.setEndPage(number);
            return stripper.getText(document);
        }
    }

    private static String flat(String text) {
        return text.replaceAll("[\\s\u00a0]+", " ").strip();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @ParameterizedTest
    @EnumSource
    void nothingOverlapsAtAnyLength(SheetPaper paper) throws Exception {
        JobSheet usual = JobSheet.of(cookbook);
        assertDisjoint(pdf(usual, paper));
        String title = "Überaus-langer-Dateiname-ohne-jede-Lücke_".repeat(9) + " çok uzun ❄ \u202Eخ.pdf";
        List<String> lifts = Collections.nCopies(400, "13 leaves, pages 1-26, 1.55 mm");
        JobSheet.VolumeSettings first = usual.parts().get(0);
        JobSheet.VolumeSettings full = new JobSheet.VolumeSettings(
                first.name(), first.settings(), first.edge(), lifts, first.strokes(), first.steps());
        List<List<String>> materials = new ArrayList<>(usual.materials());
        materials.addAll(Collections.nCopies(
                60,
                List.of(
                        "a stock whose name is long enough to be set in three lines",
                        "insert, blank",
                        "1",
                        "1000000",
                        "50000",
                        "1050000 sheets")));
        List<String> faults = Collections.nCopies(12, "ERROR page 14: " + "words and more words ".repeat(20));
        JobSheet long1 = new JobSheet(
                title,
                usual.file(),
                false,
                usual.verdict().repeat(6),
                faults,
                usual.numbers(),
                List.of(full, first, first),
                1_000_000,
                new Order("4711", "A customer of a long name ".repeat(6), "Friday"),
                Collections.nCopies(20, usual.whatIf().get(1)),
                materials,
                usual.before(),
                usual.cautions(),
                usual.reasons(),
                usual.digest(),
                usual.jobId(),
                usual.code());
        byte[] pdf = pdf(long1, paper);
        assertDisjoint(pdf);
        String text = text(pdf);
        assertThat(text).contains("Lift 400:");
        assertThat(text.split("ERROR page 14", -1)).hasSize(13);
    }

    /** Rows of two to eleven holes, on paper of either country and either way round; the captions once ran off the edge. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "R2m-DIN",
                "R2m-ISO",
                "R2i-US-a",
                "R2i-US-b",
                "R3i-US",
                "R4m-swedish",
                "R4i-US",
                "R6m-4h2s",
                "R11m-7h4s"
            })
    void captionsStayOnTheSheet(String pattern) throws Exception {
        for (String trim : List.of("a4", "letter", "a4 landscape", "letter landscape")) {
            Map<String, Object> job = Map.of("binding", "rings", "pitch", pattern, "trim", trim, "stock", "bond-20");
            Report plan;
            try {
                plan = BindPrep.plan(new PlanRequest("p", JobReader.toJob(JobSettings.of(job)), Pile.ofLeaves(40)));
            } catch (SettingException e) {
                // a short edge does not take every row
                assertThat(trim).endsWith("landscape");
                continue;
            }
            for (SheetPaper paper : SheetPaper.values()) {
                byte[] pdf = pdf(JobSheet.of(plan), paper);
                assertDisjoint(pdf);
                try (PDDocument document = Loader.loadPDF(pdf)) {
                    assertThat(document.getNumberOfPages())
                            .as("%s %s on %s", pattern, trim, paper)
                            .isEqualTo(2);
                }
            }
        }
    }

    /** No glyph of one line of print lies on one of another, and none off the sheet. */
    private static void assertDisjoint(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                List<TextPosition> glyphs = new ArrayList<>();
                PDFTextStripper stripper = new PDFTextStripper() {
                    @Override
                    protected void processTextPosition(TextPosition glyph) {
                        if (!glyph.getUnicode().isBlank()) {
                            glyphs.add(glyph);
                        }
                    }
                };
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                stripper.getText(document);
                PDPage sheet = document.getPage(page - 1);
                glyphs.forEach(g -> {
                    assertThat(g.getXDirAdj()).isGreaterThan(20);
                    assertThat(g.getXDirAdj() + g.getWidthDirAdj())
                            .isLessThan(sheet.getMediaBox().getWidth() - 20);
                    assertThat(g.getYDirAdj())
                            .isBetween(20f, sheet.getMediaBox().getHeight() - 20);
                });
                glyphs.sort((a, b) -> Float.compare(a.getYDirAdj(), b.getYDirAdj()));
                for (int i = 0; i < glyphs.size(); i++) {
                    for (int j = i + 1;
                            j < glyphs.size()
                                    && glyphs.get(j).getYDirAdj()
                                                    - glyphs.get(i).getYDirAdj()
                                            < 20;
                            j++) {
                        assertThat(onEachOther(glyphs.get(i), glyphs.get(j)))
                                .as(
                                        "page %s: %s on %s at %s, %s",
                                        page,
                                        glyphs.get(j),
                                        glyphs.get(i),
                                        glyphs.get(i).getXDirAdj(),
                                        glyphs.get(i).getYDirAdj())
                                .isFalse();
                    }
                }
            }
        }
    }

    // capitals of Roboto are 0.71 em high; letters side by side may touch by kerning
    private static boolean onEachOther(TextPosition a, TextPosition b) {
        double top = b.getYDirAdj() - 0.7 * b.getFontSizeInPt();
        boolean across =
                top < a.getYDirAdj() - 0.2 && b.getYDirAdj() > a.getYDirAdj() - 0.7 * a.getFontSizeInPt() + 0.2;
        boolean along = a.getXDirAdj() + 0.6 < b.getXDirAdj() + b.getWidthDirAdj()
                && b.getXDirAdj() + 0.6 < a.getXDirAdj() + a.getWidthDirAdj();
        return across && along;
    }

    @Test
    void equalJobsHaveEqualIdsWhereverTheirTablesWereRead() throws Exception {
        JobSettings settings = JobSettings.of(Map.of("stock", "felt-200", "tables", "shop-stocks.csv"));
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < 2; i++) {
            Job job = JobReader.toJob(
                    settings, JobFiles.read(settings, (file, beside) -> Files.readString(FIXTURES.resolve(file))));
            Report report = BindPrep.check(CheckRequest.of(FIXTURES.resolve("planner-a5.pdf"), "planner-a5.pdf", job));
            ids.add(JobSheet.of(report).jobId());
        }
        assertThat(ids).hasSize(1);
    }

    @Test
    void theSameSheetGivesTheSameBytesInAnyLocale() throws Exception {
        byte[] once = pdf(JobSheet.of(cookbook), SheetPaper.A4);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(pdf(JobSheet.of(cookbook), SheetPaper.A4)).isEqualTo(once);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void blackAndGreyWithEveryTypefaceEmbedded() throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf(JobSheet.of(cookbook), SheetPaper.A4))) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            for (PDPage page : document.getPages()) {
                for (COSName font : page.getResources().getFontNames()) {
                    assertThat(page.getResources().getFont(font).isEmbedded()).isTrue();
                }
                assertThat(new PDFStreamParser(page)
                                .parse().stream()
                                        .filter(Operator.class::isInstance)
                                        .map(o -> ((Operator) o).getName()))
                        .doesNotContain("rg", "RG", "k", "K", "cs", "CS", "Do", "sh");
            }
        }
    }

    @Test
    void keyNumbersReadFromAMetreAway() throws Exception {
        // capitals of 5 mm, a 200th of a metre (from memory, no source), are 20 pt
        try (PDDocument document = Loader.loadPDF(pdf(JobSheet.of(handbook), SheetPaper.LETTER))) {
            StringBuilder large = new StringBuilder();
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition glyph) {
                    if (glyph.getFontSizeInPt() >= 20) {
                        large.append(glyph.getUnicode());
                    }
                }
            }.getText(document);
            // to the half millimetre that a ruler has: pins 35 and 36 and the shallowest centre of 0.2 in (XJDF 2.2
            // F.10) on A4
            assertThat(large.toString().replace('\u00a0', ' ')).contains("3:1", "35-36", "5 mm", "9 mm");
        }
    }

    /** All that is set and done stands on the first page; what prepares and explains it on the next. */
    @Test
    void theOperatorsPageComesFirst() throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf(JobSheet.of(handbook), SheetPaper.A4))) {
            PDFTextStripper text = new PDFTextStripper();
            text.setEndPage(1);
            assertThat(text.getText(document))
                    .contains("Job no.", "Customer", "Due", "Initials", "FACE DOWN", "Thread", "Close", "Check")
                    .contains("Local law", "trained people")
                    .doesNotContain("MATERIALS", "WHY");
            text.setStartPage(2);
            text.setEndPage(2);
            assertThat(text.getText(document)).contains("BEFORE THE PUNCH", "MATERIALS", "WHY");
        }
    }

    /** Whose job it is and for when, where the job file says it; else lines to write on. */
    @Test
    void theFieldsAreFilledByTheJob() throws Exception {
        Report report = report(
                "members-handbook-a4.pdf", Map.of("job-number", "J-4711", "customer", "Müller 印刷", "due", "Fri 4 pm"));
        assertThat(text(pdf(JobSheet.of(report), SheetPaper.A4))).contains("J-4711", "Müller 印刷", "Fri 4 pm");
        assertThat(SheetHtml.write(JobSheet.of(report))).contains("J-4711", "Müller 印刷", "Fri 4 pm");
    }

    /** Paper of whole eighths of an inch is worked on with an inch rule, other paper with a metric one. */
    @Test
    void lengthsAreInTheUnitsOfThePaper() throws Exception {
        assertThat(JobSheet.of(cookbook).parts().get(0).settings())
                .anyMatch(s -> s.label().equals("Side guide") && s.value().endsWith("/32 in"));
        assertThat(JobSheet.of(handbook).parts().get(0).settings())
                .anyMatch(s -> s.label().equals("Side guide") && s.value().equals("9 mm"));
    }

    @Test
    void theTitleIsNoPath() {
        assertThat(JobSheet.of(handbook).title()).isEqualTo("Members' Handbook");
        assertThat(JobSheet.of(handbook).file()).isEqualTo("members-handbook-a4.pdf");
    }
}
