package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.files.PdfSource;
import io.bindprep.marks.Mark;
import io.bindprep.marks.PageMarks;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * {@link StripCases} against Poppler and Ghostscript, two renderers that share nothing with this one: where ink begins and
 * ends in the strip to 0.3 mm. What they draw at 254 dpi was recorded in {@code strip-cases.csv}, with their versions in its
 * first line; {@code -P oracle -Dbindprep.regenerate} records it again.
 */
class StripCasesTest {
    private static final double DEPTH_MM = 15;
    private static final double ALIKE_MM = 0.3;
    private static final String RECORD = "strip-cases.csv";

    /** Cases that Poppler does not decide: it draws for a screen, where other annotations show, and leaves out the last dash. */
    private static final Map<String, String> OTHERWISE = Map.of(
            "an annotation that does not print", "ghostscript",
            "an annotation to print only", "ghostscript",
            "a ticked box", "ghostscript",
            "dashes with round caps", "ghostscript",
            "a layer whose print state is off", "standard");

    /** ISO 32000-1:2008, 8.11.4.4: neither tool looks at the state for printing. */
    private static final Map<String, String> BY_THE_STANDARD =
            Map.of("a layer whose print state is off,standard", "none");

    @TempDir
    Path folder;

    static Stream<String> cases() {
        return StripCases.all().keySet().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void inkLiesWhereOthersDrawIt(String name) throws Exception {
        Map<String, String> recorded = recorded();
        recorded.putAll(BY_THE_STANDARD);
        String by = OTHERWISE.getOrDefault(name, "poppler");
        String theirs = recorded.get(name + "," + by);
        assertThat(theirs).as("recorded").isNotNull();
        try (OpenedPdf pdf = StripCases.all().get(name).get().open(folder)) {
            PageMarks marks = pdf.scan(1, PageEdge.LEFT, DEPTH_MM);
            assertThat(marks.unchecked()).isNull();
            Rectangle2D ink = marks.marks().stream()
                    .map(StripCasesTest::box)
                    .reduce(Rectangle2D::createUnion)
                    .orElse(null);
            if (theirs.equals("none") || ink == null) {
                assertThat(text(ink)).isEqualTo(theirs);
                return;
            }
            String[] sides = theirs.split(" ");
            assertThat(ink.getMinX()).as("begins").isCloseTo(Double.parseDouble(sides[0]), within(ALIKE_MM));
            assertThat(ink.getMaxX()).as("ends").isCloseTo(Double.parseDouble(sides[1]), within(ALIKE_MM));
            assertThat(ink.getMinY()).as("begins along").isCloseTo(Double.parseDouble(sides[2]), within(ALIKE_MM));
            assertThat(ink.getMaxY()).as("ends along").isCloseTo(Double.parseDouble(sides[3]), within(ALIKE_MM));
        }
    }

    private static Rectangle2D box(Mark m) {
        return new Rectangle2D.Double(
                m.nearMm(), m.alongStartMm(), m.farMm() - m.nearMm(), m.alongEndMm() - m.alongStartMm());
    }

    private static String text(Rectangle2D ink) {
        return ink == null
                ? "none"
                : String.format(
                        Locale.ROOT, "%.1f %.1f %.1f %.1f", ink.getMinX(), ink.getMaxX(), ink.getMinY(), ink.getMaxY());
    }

    private static Map<String, String> recorded() throws Exception {
        try (InputStream in = StripCasesTest.class.getResourceAsStream(RECORD)) {
            Map<String, String> rows = new LinkedHashMap<>();
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .forEach(line -> rows.put(
                            line.substring(0, line.lastIndexOf(',')), line.substring(line.lastIndexOf(',') + 1)));
            return rows;
        }
    }

    @Test
    @Tag("oracle")
    void whatIsRecordedIsWhatTheToolsDraw() throws Exception {
        assumeTrue(Raster.onPath("pdftoppm") && Raster.onPath("gs"), "Poppler and Ghostscript are not both installed");
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, Supplier<PageMaker>> c : StripCases.all().entrySet()) {
            Path file =
                    Files.write(folder.resolve("case.pdf"), c.getValue().get().bytes());
            PageFacts page;
            try (OpenedPdf pdf = Intake.open(new PdfSource(file, "case.pdf", null))) {
                page = pdf.facts().pages().get(0);
            }
            lines.add(c.getKey() + ",poppler,"
                    + text(DrawnStrip.byPoppler(file, page, PageEdge.LEFT, DEPTH_MM)
                            .inkMm(PageEdge.LEFT, DrawnStrip.LIGHTEST)));
            lines.add(c.getKey() + ",ghostscript,"
                    + text(DrawnStrip.byGhostscript(file, page, PageEdge.LEFT, DEPTH_MM)
                            .inkMm(PageEdge.LEFT, DrawnStrip.LIGHTEST)));
        }
        if (System.getProperty("bindprep.regenerate") != null) {
            lines.add(
                    0,
                    "# from and to from the binding edge, from and to along it, millimetres; at 254 dpi by "
                            + "pdftoppm -cropbox (" + version("pdftoppm", "-v") + ") and gs -dUseCropBox -dPrinted ("
                            + version("gs", "--version") + ")");
            Files.write(Path.of("src/test/resources/io/bindprep/pdf", RECORD), lines);
        } else {
            Map<String, String> recorded = recorded();
            assertThat(lines)
                    .isEqualTo(recorded.entrySet().stream()
                            .map(e -> e.getKey() + "," + e.getValue())
                            .toList());
        }
    }

    private static String version(String... command) throws Exception {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .findFirst()
                .orElse("");
    }
}
