package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.Verdict;
import io.bindprep.page.Box;
import io.bindprep.page.PageFacts;
import io.bindprep.pdf.Raster;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.ShiftReport.Result;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ShiftRequest;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Ordinary press files: a tint into the bleed, text too near the binding edge, and round the trim crop marks, registration
 * targets, colour bars and page information. Made with Cairo, Ghostscript, ReportLab and by hand, as
 * fixtures/oracle/press-files.py says. Each is drawn by two renderers.
 */
class PressFileTest {
    private static final int WHITE = 250;
    private static final int DARK = 110;

    @TempDir
    private Path folder;

    private Path press(String name) throws Exception {
        try (InputStream in = PressFileTest.class.getResourceAsStream("press/" + name + ".pdf")) {
            return Files.write(folder.resolve(name + ".pdf"), in.readAllBytes());
        }
    }

    private ShiftReport shift(Path file, Map<String, String> job, ShiftSettings settings) throws Exception {
        CheckRequest check = new CheckRequest(
                file, file.getFileName().toString(), JobReader.toJob(JobSettings.of(job)), null, (d, t) -> {});
        return BindPrep.shift(new ShiftRequest(check, folder.resolve("out.pdf"), "out.pdf", settings));
    }

    private static ShiftSettings gutter() throws Exception {
        return ShiftSettings.of(false, "6 mm", null, null, false, false, false);
    }

    private static Raster drawn(boolean poppler, Path file, int page) throws Exception {
        return poppler ? Raster.ofPoppler(file, page) : Raster.ofPdfBox(Files.readAllBytes(file), page);
    }

    /** Offset of a place in user space among the dots of a picture. */
    private static int dot(double points) {
        return (int) Math.round(points * 25.4 / 72 * Raster.PER_MM);
    }

    private static int printedOutside(Raster r, Box box) {
        int printed = 0;
        for (int y = 0; y < r.height(); y++) {
            int up = r.height() - y;
            for (int x = 0; x < r.width(); x++) {
                boolean inside = x >= dot(box.x0()) - 2
                        && x <= dot(box.x1()) + 2
                        && up >= dot(box.y0()) - 2
                        && up <= dot(box.y1()) + 2;
                printed += !inside && r.at(x, y) < WHITE ? 1 : 0;
            }
        }
        return printed;
    }

    private static int unlikeText(Raster was, Raster is, int by, int down, int[] window) {
        int unlike = 0;
        for (int y = window[1]; y < window[3]; y++) {
            for (int x = window[0]; x < window[2]; x++) {
                unlike += is.at(x, y) < DARK != was.at(x - by, y - down) < DARK ? 1 : 0;
            }
        }
        return unlike;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cairo-group",
                "cairo-gradient",
                "ghostscript-panel",
                "reportlab-panel",
                "one-form",
                "gradient-pattern",
                "marks-in-the-bleed",
                "tint-over-the-sheet"
            })
    void theTintStaysTheTextMovesAndTheMarksGo(String name) throws Exception {
        Path file = press(name);
        ShiftReport repaired = shift(file, Map.of(), ShiftSettings.builtIn());
        assertThat(repaired.refusals()).isEmpty();
        assertThat(repaired.after().pages())
                .allSatisfy(p -> assertThat(p.verdict().verdict()).isEqualTo(Verdict.CLEAR));
        assertThat(shift(file, Map.of(), gutter()).outcome()).isEqualTo(Result.CHANGED);
        PageFacts facts = repaired.before().pages().get(0).facts();
        Path out = folder.resolve("out.pdf");
        for (boolean poppler : new boolean[] {false, true}) {
            Raster was = drawn(poppler, file, 1);
            Raster is = drawn(poppler, out, 1);
            assertThat(printedOutside(was, facts.bleed())).isGreaterThan(100);
            assertThat(printedOutside(is, facts.bleed())).as("beyond the bleed").isZero();
            int left = dot(facts.trim().x0());
            int right = dot(facts.trim().x1());
            int top = is.height() - dot(facts.trim().y1());
            int bottom = is.height() - dot(facts.trim().y0());
            int unlikeTint = 0;
            for (int y = top + 10; y < bottom - 10; y++) {
                for (int x = left - 25; x < left + 50; x++) {
                    unlikeTint += Math.abs(is.at(x, y) - was.at(x, y)) > 6 ? 1 : 0;
                }
            }
            // PDFBox draws a group from a whole dot on, so its text may stand a dot aside or lower
            int[] window = {left + 61, top + 10, right, bottom - 10};
            int unlikeText = IntStream.rangeClosed(-1, 1)
                    .flatMap(down -> IntStream.rangeClosed(59, 61).map(by -> unlikeText(was, is, by, down, window)))
                    .min()
                    .orElseThrow();
            assertThat(unlikeTint).as("tint at the binding edge").isLessThan(30);
            assertThat(unlikeText).as("text, moved by 6 mm").isLessThan(was.dark() / 100);
        }
    }

    @Test
    void wordsBeyondTheTrimAreTakenOutAndNotOnlyHidden() throws Exception {
        Path file = press("one-form");
        shift(file, Map.of(), gutter());
        assertThat(words(file)).contains("slug: job 4711", "book.indd 12", "Line 29 of text");
        assertThat(words(folder.resolve("out.pdf")))
                .contains("Line 0 of text", "Line 29 of text")
                .doesNotContain("slug", "book.indd");
    }

    /** As Poppler finds them, on the whole sheet. */
    private static String words(Path file) throws Exception {
        assumeTrue(Raster.onPath("pdftotext"), "pdftotext (Poppler) is not installed");
        Process process = new ProcessBuilder("pdftotext", "-q", file.toString(), "-").start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "6 mm"})
    void aTintAtTheHeadStaysWhereThePageIsBoundThere(String gutter) throws Exception {
        Path file = press("head-no-bleedbox");
        ShiftSettings settings =
                ShiftSettings.of(false, gutter.isEmpty() ? null : gutter, null, null, false, false, false);
        ShiftReport repaired = shift(file, Map.of("binding-edge", "top"), settings);
        assertThat(repaired.outcome()).isEqualTo(Result.CHANGED);
        Raster was = Raster.ofPoppler(file, 1);
        Raster is = Raster.ofPoppler(folder.resolve("out.pdf"), 1);
        PageFacts facts = repaired.before().pages().get(0).facts();
        int top = is.height() - dot(facts.trim().y1());
        for (int y = top - 25; y < top + 30; y++) {
            assertThat(is.at(1200, y)).isCloseTo(was.at(1200, y), within(4));
        }
        Box bleed = new Box(
                facts.trim().x0() - 9,
                facts.trim().y0() - 9,
                facts.trim().x1() + 9,
                facts.trim().y1() + 9);
        assertThat(printedOutside(is, bleed)).isZero();
    }

    @Test
    void newMarksPointAtTheTrimFromOutsideTheBleed() throws Exception {
        Path file = press("one-form");
        ShiftReport r = shift(file, Map.of(), gutter().marking(true));
        assertThat(r.notes()).anyMatch(n -> n.contains("New crop marks"));
        PageFacts facts = r.before().pages().get(0).facts();
        for (boolean poppler : new boolean[] {false, true}) {
            Raster is = drawn(poppler, folder.resolve("out.pdf"), 1);
            // eight lines of 5 mm, 1 to 3 dots wide
            assertThat(printedOutside(is, facts.bleed())).isBetween(8 * 45, 8 * 52 * 3);
            int left = dot(facts.trim().x0());
            int head = is.height() - dot(facts.trim().y1());
            assertThat(darkest(is, left - 55, head - 2, 1, 4))
                    .as("left of the head")
                    .isLessThan(200);
            assertThat(darkest(is, left - 2, head - 55, 4, 1))
                    .as("above the left")
                    .isLessThan(200);
            assertThat(darkest(is, left - 55, head + 20, 1, 40))
                    .as("nothing besides")
                    .isEqualTo(255);
        }
    }

    @Test
    void aPageWithoutRoomForMarksIsNamed() throws Exception {
        Path file = Files.copy(
                Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures/cookbook-letter.pdf"),
                folder.resolve("book.pdf"));
        ShiftReport r = shift(file, Map.of("pitch", "3:1"), gutter().marking(true));
        assertThat(r.notes()).anyMatch(n -> n.contains("No room for crop marks"));
    }

    private static int darkest(Raster r, int x0, int y0, int width, int height) {
        int darkest = 255;
        for (int y = y0; y < y0 + height; y++) {
            for (int x = x0; x < x0 + width; x++) {
                darkest = Math.min(darkest, r.at(x, y));
            }
        }
        return darkest;
    }

    @Test
    void theMarksThatGoAreSaidByKind() throws Exception {
        ShiftReport r = shift(press("one-form"), Map.of(), ShiftSettings.builtIn());
        assertThat(r.notes())
                .anySatisfy(n -> assertThat(n).contains("crop marks", "bars or pictures", "page information"));
        assertThat(shift(press("cairo-gradient"), Map.of(), ShiftSettings.builtIn())
                        .notes())
                .noneSatisfy(n -> assertThat(n).contains("bars or pictures"));
    }
}
