package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.request.CheckRequest;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A page named as turned is held against the holes as the same page really turned in the file (Rotate, ISO 32000-1:2008,
 * Table 30), which then stands upright in the book.
 */
class RotatedPagesTest {
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures");

    @TempDir
    Path folder;

    private static Report check(Path file, Map<String, String> job) throws Exception {
        return BindPrep.check(CheckRequest.of(file, "book.pdf", JobReader.toJob(JobSettings.of(job))));
    }

    @ParameterizedTest
    @CsvSource({
        "left,two,270,left",
        "left,two,90,right",
        "right,two,270,left",
        "left,two-head-to-foot,270,left",
        "top,two,270,left",
        "top,two-head-to-foot,90,right",
        "left,one,90,right"
    })
    void asIfTurnedInTheFile(String edge, String sides, int rotate, String head) throws Exception {
        // the calendar: 13 landscape pages, the title of page 8 has its ink from 4.00 mm below the head
        Path plain = FIXTURES.resolve("calendar-a4-landscape.pdf");
        Path rotated = folder.resolve("turned.pdf");
        try (PDDocument document = Loader.loadPDF(plain.toFile())) {
            for (PDPage page : document.getPages()) {
                page.setRotation(rotate);
            }
            document.save(rotated.toFile());
        }
        Map<String, String> job = Map.of("binding-edge", edge, "sides", sides, "trim", "a4", "binding-margin", "60 mm");
        Report inFile = check(rotated, job);
        Report named = check(
                plain,
                Map.of(
                        "binding-edge",
                        edge,
                        "sides",
                        sides,
                        "trim",
                        "a4",
                        "binding-margin",
                        "60 mm",
                        "rotated",
                        "1-13 head " + head));
        assertThat(named.findings()).extracting(f -> f.rule()).doesNotContain("page-rotated", "page-size", "half-hole");
        List<PageReport> expected = inFile.pages();
        for (int i = 0; i < expected.size(); i++) {
            PageReport a = expected.get(i);
            PageReport b = named.pages().get(i);
            assertThat(b.verdict().verdict())
                    .as("page " + (i + 1))
                    .isEqualTo(a.verdict().verdict());
            Mark near = a.verdict().nearest();
            assertThat(b.verdict().nearest() == null).isEqualTo(near == null);
            if (near != null) {
                assertThat(b.verdict().nearest().nearMm()).isCloseTo(near.nearMm(), within(0.01));
                assertThat(alongRecto(b)).as("page " + (i + 1)).isCloseTo(alongRecto(a), within(0.01));
            }
            assertThat(b.verdict().hits().stream().map(Hit::pins).toList())
                    .as("page " + (i + 1))
                    .containsExactlyInAnyOrderElementsOf(
                            a.verdict().hits().stream().map(Hit::pins).toList());
        }
    }

    /** Start of the nearest mark, counted as the row of holes is. */
    private static double alongRecto(PageReport page) {
        Mark mark = page.verdict().nearest();
        double length = page.facts().along(page.place().bindingEdge()).mm();
        return page.place().mirrored() ? length - mark.alongEndMm() : mark.alongStartMm();
    }
}
