package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.Verdict;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.Raster;
import io.bindprep.problem.SettingException;
import io.bindprep.repair.LoneMove;
import io.bindprep.repair.LoneMove.Zone;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.ShiftReport.Result;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.report.html.HtmlReport;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ShiftRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDTrueTypeFont;
import org.apache.pdfbox.pdmodel.font.encoding.WinAnsiEncoding;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Heads, page numbers and indexes that move alone. Pages are laid out here in millimetres; what became of them Poppler,
 * MuPDF and PDFBox draw: outside what moved no dot may differ.
 */
class OnlyHitTest {
    private static final double MM = 72 / 25.4;
    private static final int WIDTH = 210;

    @TempDir
    private Path folder;

    private record Page(String content, String entries) {}

    @BeforeAll
    static void poppler() {
        assumeTrue(Raster.onPath("pdftoppm"), "pdftoppm is not installed");
        assumeTrue(Raster.onPath("mutool"), "mutool is not installed");
    }

    private ShiftReport shift(Path file, Map<String, String> job, ShiftSettings settings) throws Exception {
        return BindPrep.shift(request(file, job, settings));
    }

    private ShiftRequest request(Path file, Map<String, String> job, ShiftSettings settings) throws Exception {
        CheckRequest check = new CheckRequest(
                file, file.getFileName().toString(), JobReader.toJob(JobSettings.of(job)), null, (d, t) -> {});
        return new ShiftRequest(check, folder.resolve("out.pdf"), "out.pdf", settings);
    }

    private static ShiftSettings onlyHit() throws Exception {
        return ShiftSettings.builtIn().onlyHit(true);
    }

    /** A book of pages; objects from 6 on may be referred to. */
    private Path book(int pages, IntFunction<Page> page, String... objects) throws IOException {
        List<String> all = new ArrayList<>();
        StringBuilder kids = new StringBuilder();
        int first = 6 + objects.length;
        for (int n = 0; n < pages; n++) {
            kids.append(first + 2 * n).append(" 0 R ");
        }
        all.add("<< /Type /Catalog /Pages 2 0 R >>");
        all.add("<< /Type /Pages /Kids [" + kids + "] /Count " + pages + " >>");
        all.add("<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>");
        all.add("<< /Font << /F 3 0 R >> /XObject << /Head 6 0 R >> >>");
        all.add("null");
        all.addAll(List.of(objects));
        for (int n = 1; n <= pages; n++) {
            Page p = page.apply(n);
            int own = all.size() + 1;
            all.add("<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595.276 841.89] /Resources 4 0 R /Contents "
                    + (own + 1) + " 0 R " + p.entries + " >>");
            all.add(stream("", p.content));
        }
        StringBuilder pdf = new StringBuilder("%PDF-1.4\n");
        StringBuilder table = new StringBuilder("xref\n0 " + (all.size() + 1) + "\n0000000000 65535 f \n");
        for (int i = 0; i < all.size(); i++) {
            table.append(String.format(Locale.ROOT, "%010d 00000 n \n", pdf.length()));
            pdf.append(i + 1).append(" 0 obj\n").append(all.get(i)).append("\nendobj\n");
        }
        int start = pdf.length();
        pdf.append(table)
                .append("trailer << /Size " + (all.size() + 1) + " /Root 1 0 R >>\nstartxref\n" + start + "\n%%EOF\n");
        byte[] plain = pdf.toString().getBytes(StandardCharsets.ISO_8859_1);
        Path file = folder.resolve("in.pdf");
        try (PDDocument document = Loader.loadPDF(plain)) {
            // one font for all renderers
            COSDictionary fonts =
                    document.getPage(0).getResources().getCOSObject().getCOSDictionary(COSName.FONT);
            fonts.setItem(
                    COSName.getPDFName("F"),
                    PDTrueTypeFont.load(
                            document,
                            PDDocument.class.getResourceAsStream(
                                    "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf"),
                            WinAnsiEncoding.INSTANCE));
            document.save(file.toFile());
        }
        return file;
    }

    private static String stream(String entries, String content) {
        return "<< " + entries + " /Length " + content.length() + " >> stream\n" + content + "\nendstream";
    }

    /** Operators of a text object; places in millimetres from left and foot. */
    private static String text(double x, double y, int points, String shown) {
        return String.format(
                Locale.ROOT, "BT /F %d Tf 1 0 0 1 %.3f %.3f Tm (%s) Tj ET\n", points, x * MM, y * MM, shown);
    }

    private static String body(double x) {
        StringBuilder body = new StringBuilder();
        for (int line = 0; line < 40; line++) {
            body.append(text(x, 255 - 5 * line, 11, "It is a truth universally acknowledged, that a single man in"));
        }
        return body.toString();
    }

    private static boolean recto(int page) {
        return page % 2 == 1;
    }

    /** Width of figures in the metrics of Helvetica: 556 each. */
    private static double digits(int count, int points) {
        return count * 0.556 * points / MM;
    }

    /** A page number at the inner side of the foot, text from 25 mm on. */
    private static Page numbered(int page) {
        String number = Integer.toString(100 + page);
        double x = recto(page) ? 6 : WIDTH - 6 - digits(3, 10);
        return new Page(body(25) + text(x, 15, 10, number), "");
    }

    private enum Renderer {
        POPPLER,
        MUPDF,
        PDFBOX;

        Raster draw(Path file, int page) throws Exception {
            return switch (this) {
                case POPPLER -> Raster.ofPoppler(file, page);
                case MUPDF -> Raster.ofMuPdf(file, page);
                case PDFBOX -> Raster.ofPdfBox(Files.readAllBytes(file), page);
            };
        }
    }

    /** Outside the boxes nothing differs; what was in them has moved. */
    private void onlyTheseMoved(Path file, ShiftReport r, int page) throws Exception {
        Path out = folder.resolve("out.pdf");
        List<LoneMove> moves = r.alone().stream().filter(m -> m.page() == page).toList();
        for (Renderer renderer : Renderer.values()) {
            Raster was = renderer.draw(file, page);
            Raster is = renderer.draw(out, page);
            int far = 0;
            int moved = 0;
            for (int y = 0; y < was.height(); y++) {
                for (int x = 0; x < was.width(); x++) {
                    if (was.at(x, y) == is.at(x, y)) {
                        continue;
                    }
                    double mmX = x / (double) Raster.PER_MM;
                    double mmY = y / (double) Raster.PER_MM;
                    boolean inside = moves.stream().anyMatch(m -> {
                        double across = m.bindingEdge() == PageEdge.RIGHT
                                ? WIDTH - mmX
                                : m.bindingEdge() == PageEdge.TOP ? mmY : mmX;
                        double along = m.bindingEdge() == PageEdge.TOP ? mmX : mmY;
                        return across > m.box().getMinX() - 0.3
                                && across < m.box().getMaxX() + m.awayMm() + 0.3
                                && along > m.box().getMinY() - 0.3
                                && along < m.box().getMaxY() + 0.3;
                    });
                    far += inside ? 0 : 1;
                    moved += inside ? 1 : 0;
                }
            }
            assertThat(far)
                    .as(renderer + ": dots that differ elsewhere on page " + page)
                    .isZero();
            assertThat(moved).as("dots that differ on page " + page).isGreaterThan(moves.isEmpty() ? -1 : 20);
            assertThat(is.dark()).as("ink on page " + page).isCloseTo(was.dark(), within(was.dark() / 50 + 40));
        }
    }

    @Test
    void pageNumbersMoveAndTheTextStays() throws Exception {
        Path file = book(6, OnlyHitTest::numbered);
        ShiftReport r = shift(file, Map.of(), onlyHit());
        assertThat(r.outcome()).as(r.refusals() + "").isEqualTo(Result.CHANGED);
        assertThat(r.after().pages())
                .allSatisfy(p -> assertThat(p.verdict().verdict()).isEqualTo(Verdict.CLEAR));
        assertThat(r.alone()).hasSize(6).allSatisfy(m -> {
            assertThat(m.zone()).isEqualTo(Zone.FOOT);
            assertThat(m.awayMm()).isBetween(3.0, 3.6);
        });
        for (int page = 1; page <= 6; page++) {
            onlyTheseMoved(file, r, page);
        }
        // the page that decides comes to the binding margin, the others keep in line with it
        List<Double> ink = new ArrayList<>();
        for (int page = 1; page <= 6; page++) {
            PageEdge bound = recto(page) ? PageEdge.LEFT : PageEdge.RIGHT;
            ink.add(Raster.ofPoppler(folder.resolve("out.pdf"), page).ink(bound));
        }
        assertThat(ink).allSatisfy(mm -> assertThat(mm).isBetween(9.45, 9.8));
        assertThat(ink).anySatisfy(mm -> assertThat(mm).isCloseTo(9.53, within(0.1)));
    }

    @Test
    void numbersOfOneAndTwoDigitsKeepInLine() throws Exception {
        // all end 12 mm from the binding: of 8 to 11 only those of two digits begin too near it
        Path file = book(4, n -> {
            String number = Integer.toString(7 + n);
            double x = recto(n) ? 12 - digits(number.length(), 10) : WIDTH - 12;
            return new Page(body(25) + text(x, 15, 10, number), "");
        });
        ShiftReport r = shift(file, Map.of(), onlyHit());
        assertThat(r.outcome()).as(r.refusals() + "").isEqualTo(Result.CHANGED);
        // 8 and 9 are clear but end where 10 and 11 end
        assertThat(r.alone()).extracting(LoneMove::page).containsExactly(1, 2, 3, 4);
        assertThat(r.alone())
                .extracting(LoneMove::awayMm)
                .containsOnly(r.alone().get(0).awayMm());
        assertThat(r.notes()).anyMatch(n -> n.contains("Moved alike to keep in line") && n.contains("(1-2)"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                // the next line by ', by " and by T*, with spacing, scaling and rise
                "BT /F 9 Tf 12 TL 1 0 0 1 17 797 Tm (Marrowby) ' (Allotments) Tj ET",
                "BT /F 9 Tf 12 TL 1 0 0 1 17 797 Tm 2 1 (Marrowby and so on) \" ET",
                "BT /F 9 Tf 80 Tz 1 Tc 3 Ts 1 0 0 1 17 782 Tm [(Mar) -300 (row) 20 (by)] TJ (Allotments) Tj ET",
                // a larger text space, a rule beneath the head
                "q 2 0 0 2 0 0 cm BT /F 4.5 Tf 1 0 0 1 8.5 392 Tm (Marrowby Allotments) Tj ET Q 17 780 200 0.5 re f",
                // a form used by each page
                "q 1 0 0 1 17 780 cm /Head Do Q",
            })
    void aHeadMovesHoweverItIsSet(String head) throws Exception {
        Path file = book(
                3,
                n -> new Page(body(25) + head, ""),
                stream(
                        "/Type /XObject /Subtype /Form /BBox [-1 -5 120 20] /Resources 4 0 R",
                        "0.6 g -1 -4 100 14 re f 0 g BT /F 9 Tf 0 0 Td (Marrowby ) Tj (Allotments) Tj ET"));
        ShiftReport r = shift(file, Map.of("sides", "one"), onlyHit());
        assertThat(r.outcome()).as(r.refusals() + "").isEqualTo(Result.CHANGED);
        assertThat(r.alone()).hasSize(3).allSatisfy(m -> assertThat(m.zone()).isEqualTo(Zone.HEAD));
        onlyTheseMoved(file, r, 1);
        Raster is = Raster.ofPoppler(folder.resolve("out.pdf"), 2);
        assertThat(is.ink(PageEdge.LEFT)).isCloseTo(9.53, within(0.12));
        assertThat(is.unlike(Raster.ofPoppler(folder.resolve("out.pdf"), 1), 0, 0))
                .isZero();
    }

    @Test
    void anIndexBesideTheTextMovesWithItsTabAndItsLink() throws Exception {
        Path file = book(
                4,
                n -> new Page(
                        body(30) + "0.2 g 8.5 500 20 40 re f 1 g " + text(4.5, 182, 12, "B") + "0 g\n",
                        "/Annots [<< /Type /Annot /Subtype /Link /Border [0 0 0] /Rect [8 499 29 541] /Dest [8 0 R /Fit] >>"
                                + " << /Type /Annot /Subtype /Link /Border [0 0 0] /Rect [100 400 200 420] /Dest [8 0 R /Fit] >>]"));
        ShiftReport r = shift(file, Map.of("sides", "one"), onlyHit());
        assertThat(r.outcome()).as(r.refusals() + "").isEqualTo(Result.CHANGED);
        assertThat(r.alone()).hasSize(4).allSatisfy(m -> assertThat(m.zone()).isEqualTo(Zone.SIDE));
        onlyTheseMoved(file, r, 2);
        double points = r.alone().get(0).awayMm() * MM;
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("out.pdf").toFile())) {
            PDRectangle on = pdf.getPage(1).getAnnotations().get(0).getRectangle();
            assertThat((double) on.getLowerLeftX()).isCloseTo(8 + points, within(0.02));
            assertThat(on.getLowerLeftY()).isEqualTo(499);
            PDRectangle off = pdf.getPage(1).getAnnotations().get(1).getRectangle();
            assertThat(off.getLowerLeftX()).isEqualTo(100);
        }
    }

    @Test
    void aHeadAtTheTopEdgeOfACalendarMovesDown() throws Exception {
        Path file = book(3, n -> new Page(body(25) + text(80, 292 - 2.5, 9, "Marrowby"), ""));
        ShiftReport r = shift(file, Map.of("sides", "one", "binding-edge", "top"), onlyHit());
        assertThat(r.outcome()).as(r.refusals() + "").isEqualTo(Result.CHANGED);
        onlyTheseMoved(file, r, 1);
        assertThat(Raster.ofPoppler(folder.resolve("out.pdf"), 1).ink(PageEdge.TOP))
                .isCloseTo(9.53, within(0.12));
    }

    private List<String> refused(int pages, IntFunction<Page> page, ShiftSettings settings) throws Exception {
        ShiftReport r = shift(book(pages, page), Map.of("sides", "one"), settings);
        assertThat(r.outcome()).isEqualTo(Result.REFUSED);
        assertThat(folder.resolve("out.pdf")).doesNotExist();
        return r.refusals();
    }

    @Test
    void partOfTheTextIsRefused() throws Exception {
        assertThat(refused(4, n -> new Page(body(n == 3 ? 6 : 25), ""), onlyHit()))
                .anyMatch(s -> s.contains("page 3 ") && s.contains("part of the text"))
                .anyMatch(s -> s.contains("keep \"3\""));
    }

    /** A manuscript of double spacing: its first line stands by itself, and on each page. */
    @Test
    void theFirstLineOfWideSetTextIsRefused() throws Exception {
        assertThat(refused(
                        4,
                        n -> {
                            StringBuilder wide = new StringBuilder();
                            for (int line = 0; line < 24; line++) {
                                double x = line == 0 ? 6 : 25;
                                wide.append(text(x, 280 - 9 * line, 11, "It is a truth universally acknowledged"));
                            }
                            return new Page(wide.toString(), "");
                        },
                        onlyHit()))
                .anyMatch(s -> s.contains("part of the text"));
    }

    @Test
    void aThingOnOnePageAloneIsRefused() throws Exception {
        assertThat(refused(
                        4,
                        n -> new Page(body(25) + (n == 2 ? text(6, 282, 14, "Chapter the first") : ""), ""),
                        onlyHit()))
                .anyMatch(s -> s.contains("page 2 ") && s.contains("on other pages"));
    }

    @Test
    void aNumberThatWouldRunIntoItsNeighbourIsRefused() throws Exception {
        assertThat(refused(4, n -> new Page(body(25) + text(4, 150, 10, "17") + text(12, 150, 10, "*"), ""), onlyHit()))
                .anyMatch(s -> s.contains("part of the text") || s.contains("no room"));
    }

    @Test
    void aHeadThatAClipHoldsIsRefused() throws Exception {
        assertThat(refused(
                        4,
                        n -> new Page(body(25) + "q 0 775 32 60 re W n " + text(6, 280, 9, "Mar") + " Q\n", ""),
                        onlyHit()))
                .anyMatch(s -> s.contains("More than was meant to would move") || s.contains("holds it"));
    }

    @Test
    void aPictureIsRefusedAndAKeptPageStays() throws Exception {
        IntFunction<Page> page = n -> new Page(
                body(60)
                        + (n == 1 ? "q 140 0 0 300 14 300 cm BI /W 1 /H 1 /BPC 8 /CS /G ID x EI Q\n" : "")
                        + text(6, 15, 10, Integer.toString(10 + n)),
                "");
        assertThat(refused(4, page, onlyHit())).anyMatch(s -> s.contains("page 1 ") && s.contains("cannot be moved"));
        ShiftReport kept =
                shift(book(4, page), Map.of("sides", "one"), onlyHit().keeping("1"));
        assertThat(kept.outcome()).as(kept.refusals() + "").isEqualTo(Result.CHANGED);
        assertThat(kept.alone()).extracting(LoneMove::page).containsExactly(2, 3, 4);
    }

    @Test
    void settingsThatMoveContentDoNotGoWithIt() {
        assertThatThrownBy(() -> ShiftSettings.of(true, null, null, null, false, false, false)
                        .onlyHit(true))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("page-by-page");
    }

    @Test
    void theHtmlReportShowsBeforeAndAfter() throws Exception {
        ShiftRequest plain = request(book(6, OnlyHitTest::numbered), Map.of(), onlyHit());
        ShiftRequest request =
                new ShiftRequest(plain.check(), plain.output(), plain.output().toString(), plain.settings());
        ShiftReport r = BindPrep.shift(request);
        var pictures = BindPrep.pictures(request, r);
        assertThat(pictures).hasSize(6);
        assertThat(pictures.get(0).before().closeUps()).hasSize(1);
        assertThat(pictures.get(0).after().closeUps()).hasSize(1);
        String html = HtmlReport.write(r, pictures);
        assertThat(html)
                .contains(
                        "<b>Before</b>, page 1",
                        "<b>After</b>, page 6",
                        "what stands at the foot: pages 1-6",
                        "out.pdf")
                .contains("bar 10\u00a0mm")
                .doesNotContain("<script", folder.toString());
    }

    @Test
    void picturesOfTheWorstPagesComeFirst() throws Exception {
        Path file = book(4, page -> page == 3 ? numbered(page) : new Page(body(25), ""));
        ShiftRequest request = request(file, Map.of(), ShiftSettings.builtIn());
        assertThat(BindPrep.pictures(request, BindPrep.shift(request)))
                .extracting(pair -> pair.before().page())
                .containsExactly(3, 1, 2, 4);
    }
}
