package io.bindprep.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.files.PdfSource;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageMarks;
import io.bindprep.marks.Stage;
import io.bindprep.page.PageEdge;
import io.bindprep.page.PageFacts;
import io.bindprep.problem.UnreadableInputException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Page by page, where the first ink from the binding edge lies, against Poppler's drawing of the same strip at 254 dpi: both
 * beyond 12 mm, or alike to 0.3 mm. Left edges on odd pages, right edges on even ones.
 *
 * <p>The edge of a scanned or photographed letter fades over several dots. There ours must lie between Poppler's first dot
 * of 4 % tone and its first that is as dark as a scan's marks are, 60 of 256 darker than white.
 *
 * <p>Every page that differs must stand with its cause in {@code fixtures/oracle/strip-disagreements.csv}. What was compared
 * is written to {@code target/strip-oracle.csv}. Run with {@code -P oracle}; {@code -Doracle.folder} names another folder of
 * PDF files, to look at only.
 */
@Tag("oracle")
class StripOracleTest {
    private static final double WITHIN_MM = 12;
    private static final double ALIKE_MM = 0.3;
    private static final double LEAST_AGREEMENT = 0.998;
    private static final double DEPTH_MM = 15;
    private static final int SCANNED_LIGHTEST = 195;

    private static final Path ROOT = Path.of(System.getProperty("bindprep.root", ".."));
    private static final String CAUSES = "fixtures/oracle/strip-disagreements.csv";

    private final List<String> table = new ArrayList<>();

    @Test
    void theFirstInkLiesWherePopplerDrawsIt() throws Exception {
        assumeTrue(Raster.onPath("pdftoppm"), "pdftoppm (Poppler) is not installed");
        String other = System.getProperty("oracle.folder", "");
        Path folder = other.isEmpty() ? ROOT.resolve("../shared/corpus").normalize() : Path.of(other);
        assumeTrue(Files.isDirectory(folder), "the corpus is not here");
        Map<String, String> off = new LinkedHashMap<>();
        int compared = 0;
        for (Path file : files(folder)) {
            String name = folder.relativize(file).toString();
            try (OpenedPdf pdf = Intake.open(new PdfSource(file, name, null))) {
                for (PageFacts page : pdf.facts().pages()) {
                    Compared c = compare(pdf, file, page);
                    table.add(name + "," + c);
                    compared += c.comparable() ? 1 : 0;
                    if (c.comparable() && !c.agree()) {
                        off.put(name + "," + page.page(), c.toString());
                    }
                }
            } catch (UnreadableInputException e) {
                table.add(name + ",,,refused");
            }
        }
        Files.write(Path.of("target/strip-oracle.csv"), table);
        double agreement = 1 - (double) off.size() / compared;
        System.out.println(String.format(
                Locale.ROOT, "%d pages compared, %d differ: %.2f %% agree", compared, off.size(), 100 * agreement));
        off.forEach((where, what) -> System.out.println(where + "  " + what));
        if (other.isEmpty()) {
            assertThat(agreement).isGreaterThanOrEqualTo(LEAST_AGREEMENT);
            assertThat(off.keySet()).isSubsetOf(causes());
        }
    }

    /** First ink that either sees, millimetres from the binding edge; infinite where the strip has none. */
    private record Compared(int page, double ours, double theirs, double theirsDark, String unchecked) {
        boolean comparable() {
            return unchecked.isEmpty();
        }

        boolean agree() {
            return ours > WITHIN_MM - ALIKE_MM && theirsDark > WITHIN_MM - ALIKE_MM
                    || ours >= theirs - ALIKE_MM && ours <= theirsDark + ALIKE_MM;
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%d,%.2f,%.2f,%.2f,%s", page, ours, theirs, theirsDark, unchecked);
        }
    }

    private static Compared compare(OpenedPdf pdf, Path file, PageFacts page) throws Exception {
        PageEdge edge = page.page() % 2 == 1 ? PageEdge.LEFT : PageEdge.RIGHT;
        PageMarks marks = pdf.scan(page.page(), edge, DEPTH_MM);
        if (marks.unchecked() != null) {
            return new Compared(page.page(), 0, 0, 0, "not checked: " + marks.unchecked());
        }
        double ours = marks.marks().stream().mapToDouble(Mark::nearMm).min().orElse(Double.POSITIVE_INFINITY);
        DrawnStrip drawn = DrawnStrip.byPoppler(file, page, edge, DEPTH_MM);
        if (drawn == null) {
            return new Compared(page.page(), ours, 0, 0, "Poppler draws nothing");
        }
        boolean scanned = marks.marks().stream().anyMatch(m -> m.kind() == MarkKind.IMAGE && m.stage() == Stage.RASTER);
        double first = first(drawn.inkMm(edge, DrawnStrip.LIGHTEST));
        return new Compared(page.page(), ours, first, scanned ? first(drawn.inkMm(edge, SCANNED_LIGHTEST)) : first, "");
    }

    private static double first(Rectangle2D ink) {
        return ink == null ? Double.POSITIVE_INFINITY : ink.getMinX();
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(f -> f.toString().endsWith(".pdf")).sorted().toList();
        }
    }

    private static List<String> causes() throws IOException {
        return Files.readAllLines(ROOT.resolve(CAUSES)).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(",", 6))
                .peek(cells -> assertThat(cells).as(String.join(",", cells)).hasSize(6))
                .peek(cells ->
                        assertThat(cells[5]).as("the cause of " + cells[0]).isNotBlank())
                .map(cells -> cells[0] + "," + cells[1])
                .toList();
    }
}
