package io.bindprep.pdf;

import static io.bindprep.pdf.PageMaker.numbers;
import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.files.PdfSource;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.strip.LeftOut;
import io.bindprep.pdf.strip.StripRaster;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Content cut to what paints near a strip draws the same strip: PDFBox, which draws both, is the judge. */
class StripContentTest {
    private static final double DEPTH_MM = 15;

    @TempDir
    Path folder;

    private static void assertSame(OpenedPdf pdf, int page, PageEdge edge, String what) throws Exception {
        StripRaster.Source whole = strip(pdf, page, edge);
        StripRaster.Source lean = pdf.lean(whole);
        StripRaster all = whole.draw(LeftOut.NOTHING);
        StripRaster some = lean.draw(LeftOut.NOTHING);
        assertThat(some.problem()).as(what).isEqualTo(all.problem());
        assertThat(some.rgb()).as(what).isEqualTo(all.rgb());
    }

    private static StripRaster.Source strip(OpenedPdf pdf, int page, PageEdge edge) {
        return pdf.strip(pdf.page(page), pdf.facts().pages().get(page - 1), edge, DEPTH_MM);
    }

    private static Stream<Path> fixtures() throws Exception {
        try (Stream<Path> all = Files.list(Path.of(System.getProperty("bindprep.root"), "fixtures"))) {
            return all
                    .filter(f -> List.of(
                                    "calendar-a4-landscape.pdf",
                                    "cookbook-letter.pdf",
                                    "members-handbook-a4.pdf",
                                    "mixed-sizes.pdf",
                                    "planner-a5.pdf")
                            .contains(f.getFileName().toString()))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void theStripsOfPagesOfRealProducersStayAsTheyAre(Path file) throws Exception {
        try (OpenedPdf pdf = Intake.open(new PdfSource(file, "x.pdf", null))) {
            int pages = pdf.facts().pages().size();
            for (int page = 1; page <= pages; page += Math.max(1, pages / 8)) {
                for (PageEdge edge : PageEdge.values()) {
                    assertSame(pdf, page, edge, "page " + page + " " + edge);
                }
            }
        }
    }

    @Test
    void theStripsOfPagesWithOneThingInThemStayAsTheyAre() throws Exception {
        for (Map.Entry<String, Supplier<PageMaker>> one : StripCases.all().entrySet()) {
            try (OpenedPdf pdf = one.getValue().get().open(folder)) {
                for (PageEdge edge : PageEdge.values()) {
                    assertSame(pdf, 1, edge, one.getKey() + " " + edge);
                }
            }
        }
    }

    @Test
    void theStripsOfPagesOfManyThingsAnywhereStayAsTheyAre() throws Exception {
        for (int seed = 0; seed < 150; seed++) {
            String content = new Anything(seed).content();
            try (OpenedPdf pdf = page(content).open(folder)) {
                assertSame(pdf, 1, PageEdge.LEFT, content);
            }
        }
    }

    private static PageMaker page(String content) {
        PageMaker m = PageMaker.a4();
        COSStream form = m.stream("0.5 g 0 0 20 20 re f 1 0 0 RG 3 3 m 17 17 l S");
        form.setItem(COSName.SUBTYPE, COSName.FORM);
        form.setItem(COSName.BBOX, numbers(0, 0, 20, 20));
        COSDictionary shading = new COSDictionary();
        shading.setInt(COSName.SHADING_TYPE, 2);
        shading.setItem(COSName.COLORSPACE, COSName.DEVICERGB);
        shading.setItem(COSName.COORDS, numbers(0, 0, 210, 297));
        COSDictionary function = new COSDictionary();
        function.setInt(COSName.FUNCTION_TYPE, 2);
        function.setItem(COSName.DOMAIN, numbers(0, 1));
        function.setItem(COSName.C0, numbers(1, 0, 0));
        function.setItem(COSName.C1, numbers(0, 0, 1));
        function.setInt(COSName.N, 1);
        shading.setItem(COSName.FUNCTION, function);
        COSDictionary font = new COSDictionary();
        font.setItem(COSName.TYPE, COSName.FONT);
        font.setItem(COSName.SUBTYPE, COSName.TYPE1);
        font.setName(COSName.BASE_FONT, "Helvetica");
        return m.resource(COSName.XOBJECT, "X", form)
                .resource(COSName.SHADING, "S", shading)
                .resource(COSName.FONT, "F", font)
                .draw(content);
    }

    @Test
    void whatIsAwayGoesWithAllThatItNeeds() throws Exception {
        // 8.4.2: Q takes back whatever was set since its q; 9.4.2: what is shown moves what follows, until a place is
        // set
        String content = "0.3 g q 1 0 0 1 90 0 cm 2 w 0 0 5 5 re S Q /F 4 Tf BT 100 50 Td (far) Tj ET\n"
                + "BT 2 80 Td (a) Tj 0 -10 Td (near) Tj [(b)] TJ ET 100 100 m 120 120 l S\n"
                + "q 50 60 5 5 re W n 0 0 2 2 re f Q q 0 0 30 30 re W S 100 0 9 9 re f 1 0 0 1 2 2 cm /X Do Q";
        assertThat(near(content))
                .isEqualTo("0.3 g /F 4 Tf BT 100 50 Td ET BT 2 80 Td (a) Tj 0 -10 Td (near) Tj [(b)] TJ ET"
                        + " q 50 60 5 5 re W n 0 0 2 2 re f Q q 0 0 30 30 re W S 1 0 0 1 2 2 cm /X Do Q");
    }

    private String near(String content) throws Exception {
        try (OpenedPdf pdf = page(content).open(folder)) {
            byte[] near = pdf.lean(strip(pdf, 1, PageEdge.LEFT))
                    .page()
                    .getCOSStream(COSName.CONTENTS)
                    .createInputStream()
                    .readAllBytes();
            // PageMaker begins with a matrix for millimetres
            return new String(near, StandardCharsets.US_ASCII)
                    .replaceAll("\\s+", " ")
                    .replaceFirst("^.*? cm ", "")
                    .strip();
        }
    }

    @Test
    void aLineThatRunsAwayFromTheStripStaysWhole() throws Exception {
        String line = "/F 5 Tf BT 2 80 Td (Near) Tj (and on) Tj (and away from it) Tj (and farther) Tj ET";
        assertThat(near(line)).isEqualTo(line);
    }

    @Test
    void whatBeginsBetweenQAndItsQAndEndsBehindStays() throws Exception {
        // 14.6.1: sequences of marked content should nest in what they are in; what hides a layer must not get lost
        String marked = "q /OC /L BDC Q 2 2 3 3 re f EMC";
        assertThat(near(marked)).isEqualTo(marked);
        String closed = "/OC /L BDC q EMC Q 2 2 3 3 re f";
        assertThat(near(closed)).isEqualTo(closed);
        String other = "/OC /L BDC q q EMC /A BMC Q Q 2 2 3 3 re f EMC";
        assertThat(near(other)).isEqualTo(other);
        String text = "BT q ET Q 2 2 3 3 re f";
        assertThat(near(text)).isEqualTo(text);
        assertThat(near("q /OC /L BDC EMC BT ET Q 2 2 3 3 re f")).isEqualTo("2 2 3 3 re f");
    }

    @Test
    void aPathThatOnlyClipsStays() throws Exception {
        // 8.5.4: a path may be painted and clip what follows
        String content = "q 40 0 m 60 0 l 60 300 l 40 300 l W S 0 0 210 297 re f Q 5 5 5 5 re f";
        try (OpenedPdf pdf = page(content).open(folder)) {
            assertSame(pdf, 1, PageEdge.LEFT, content);
        }
    }

    /** Drawing instructions at random: near the left edge, across it and away from it. */
    private static final class Anything {
        private final Random random;
        private final StringBuilder out = new StringBuilder("0 g 0 G\n");
        private int open;

        Anything(int seed) {
            random = new Random(seed);
        }

        String content() {
            for (int i = 0; i < 60; i++) {
                switch (random.nextInt(12)) {
                    case 0 -> {
                        out.append("q\n");
                        open++;
                    }
                    case 1 -> {
                        if (open > 0) {
                            out.append("Q\n");
                            open--;
                        }
                    }
                    case 2 ->
                        put(
                                "%s 0 0 %s %s %s cm",
                                0.5 + random.nextDouble(), 0.5 + random.nextDouble(), x() - 30, y() - 100);
                    case 3 ->
                        put(
                                "%s %s %s rg %s w",
                                random.nextDouble(), random.nextDouble(), random.nextDouble(), random.nextDouble() * 3);
                    case 4 ->
                        put("%s %s %s %s re %s", x(), y(), 1 + x() / 2, 1 + y() / 4, pick("f", "S", "B", "n", "f*"));
                    case 5 ->
                        put(
                                "%s %s m %s %s l %s %s %s %s %s %s c %s",
                                x(),
                                y(),
                                x(),
                                y(),
                                x(),
                                y(),
                                x(),
                                y(),
                                x(),
                                y(),
                                pick("S", "s", "f", "b", "W n", "W* S"));
                    case 6 ->
                        put(
                                "%s %s %s %s re %s",
                                x() - 5, y() - 5, 100 + x(), 100 + y(), pick("W n", "W S", "W* f", "W n"));
                    case 7 -> text();
                    case 8 -> put("q 1 0 0 1 %s %s cm /X Do Q", x(), y());
                    case 9 -> put("q %s %s %s %s re W n /S sh Q", x(), y(), 1 + x() / 4, 1 + y() / 4);
                    case 10 -> put("/OC /None BDC %s %s 3 3 re f EMC", x(), y());
                    default ->
                        put("%s Tc %s Tw %s TL", random.nextDouble(), random.nextDouble(), 3 + random.nextDouble());
                }
            }
            out.append("Q ".repeat(open));
            return out.toString();
        }

        private void text() {
            put("BT /F %s Tf %s %s Td", 2 + random.nextInt(6), x(), y());
            if (random.nextInt(8) == 0) {
                out.append("7 Tr ");
            }
            for (int i = random.nextInt(5); i >= 0; i--) {
                put(pick(
                        "(Word) Tj",
                        "[(in) -300 (line)] TJ",
                        "(next) '",
                        "1 0.2 (both) \"",
                        "T*",
                        "-8 -6 TD",
                        "30 -4 Td",
                        "0.2 0.4 0.6 rg"));
            }
            out.append("ET 0 Tr\n");
        }

        private double x() {
            return random.nextInt(3) == 0 ? random.nextDouble() * 25 : random.nextDouble() * 200;
        }

        private double y() {
            return random.nextDouble() * 290;
        }

        private String pick(String... any) {
            return any[random.nextInt(any.length)];
        }

        private void put(String format, Object... values) {
            Object[] texts = Stream.of(values)
                    .map(v -> v instanceof Double d ? String.format(Locale.ROOT, "%.2f", d) : v.toString())
                    .toArray();
            out.append(String.format(Locale.ROOT, format, texts)).append('\n');
        }
    }
}
