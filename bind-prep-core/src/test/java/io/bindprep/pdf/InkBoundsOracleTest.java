package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.files.PdfSource;
import io.bindprep.marks.Mark;
import io.bindprep.marks.PageMarks;
import io.bindprep.marks.Stage;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Every page's ink bounds to 0.1 mm (0.45 mm where drawn dots of 0.2 mm end the ink), but for three on which Poppler (a
 * third renderer) agrees with this one against Ghostscript: see fixtures/oracle/README.md.
 *
 * <p>Ink bounds against Ghostscript's bbox device: a general-purpose renderer that shares no code with this one. Its results
 * were recorded by fixtures/oracle/record-ink-bounds.sh; the version stands in the first line of each file.
 */
class InkBoundsOracleTest {
    private static final double MM = 25.4 / 72;
    /** Ghostscript's bbox is itself rounded to its 4000 dpi device and pads hairlines. */
    private static final double NEAR_MM = 0.1;

    /** Pictures are judged by dots of 0.2 mm, and a dot is dark or not. */
    private static final double NEAR_BY_DOTS_MM = 0.45;

    private static final Path ROOT = Path.of(System.getProperty("bindprep.root", ".."));

    private record Box(double x0, double y0, double x1, double y1, boolean dots) {
        double off(Box o) {
            return Math.max(
                    Math.max(Math.abs(x0 - o.x0), Math.abs(y0 - o.y0)),
                    Math.max(Math.abs(x1 - o.x1), Math.abs(y1 - o.y1)));
        }
    }

    @Test
    void fixturesAgreeWithGhostscriptOnEveryPage() throws Exception {
        assertThat(compare("ink-bounds-fixtures.csv", ROOT.resolve("fixtures")))
                .containsExactlyInAnyOrder("members-handbook-a4.pdf 10", "mixed-sizes.pdf 10");
    }

    @Test
    void booksAgreeWithGhostscript() throws Exception {
        Path books = ROOT.resolve("../shared/corpus/books");
        assumeTrue(Files.isDirectory(books), "the corpus of books is not here");
        assertThat(compare("ink-bounds-books.csv", books)).containsExactly("snippets.pdf 202");
    }

    private static List<String> compare(String recorded, Path folder) throws Exception {
        List<String> off = new ArrayList<>();
        int compared = 0;
        for (Map.Entry<String, List<Box>> file : read(recorded).entrySet()) {
            try (OpenedPdf pdf = Intake.open(new PdfSource(folder.resolve(file.getKey()), file.getKey(), null))) {
                assertThat(pdf.facts().pages()).hasSameSizeAs(file.getValue());
                for (int page = 1; page <= file.getValue().size(); page++) {
                    Box theirs = file.getValue().get(page - 1);
                    compared++;
                    // drawing a strip as wide as the page takes long: only where outlines do not settle it
                    if (ours(pdf, page, 0).off(theirs) <= NEAR_MM) {
                        continue;
                    }
                    Box ours = ours(pdf, page, Double.POSITIVE_INFINITY);
                    if (ours.off(theirs) > (ours.dots ? NEAR_BY_DOTS_MM : NEAR_MM)) {
                        off.add(file.getKey() + " " + page);
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(150);
        return off;
    }

    /** The union of all marks in a strip as deep as the page, from the lower left corner, millimetres. */
    private static Box ours(OpenedPdf pdf, int page, double drawnMm) {
        PageFacts f = pdf.facts().pages().get(page - 1);
        double w = f.trimWidth().mm();
        double h = f.trimHeight().mm();
        PageMarks marks = pdf.scan(page, PageEdge.LEFT, w, drawnMm);
        assertThat(marks.unchecked()).isNull();
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = x0;
        double x1 = -x0;
        double y1 = -x0;
        for (Mark m : marks.marks()) {
            x0 = Math.min(x0, m.nearMm());
            x1 = Math.max(x1, m.farMm());
            y0 = Math.min(y0, h - m.alongEndMm());
            y1 = Math.max(y1, h - m.alongStartMm());
        }
        boolean dots = marks.marks().stream().anyMatch(m -> m.stage() == Stage.RASTER);
        return marks.marks().isEmpty() ? new Box(0, 0, 0, 0, false) : new Box(x0, y0, x1, y1, dots);
    }

    private static Map<String, List<Box>> read(String name) throws IOException {
        Map<String, List<Box>> boxes = new LinkedHashMap<>();
        try (BufferedReader in = new BufferedReader(
                new InputStreamReader(InkBoundsOracleTest.class.getResourceAsStream(name), StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                if (line.startsWith("#") || line.startsWith("file,")) {
                    continue;
                }
                String[] c = line.split(",");
                boxes.computeIfAbsent(c[0], f -> new ArrayList<>())
                        .add(new Box(pt(c[2]), pt(c[3]), pt(c[4]), pt(c[5]), false));
            }
        }
        return boxes;
    }

    private static double pt(String s) {
        return Double.parseDouble(s) * MM;
    }
}
