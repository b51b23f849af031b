package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.block.Leaf;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.Verdict;
import io.bindprep.pdf.Raster;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.repair.SplitReport;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ShiftRequest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The cookbook on board of 0.048 in (JCP Q20) is three times too thick for any wire. */
class SplitTest {
    private static final Path COOKBOOK =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures/cookbook-letter.pdf");

    @TempDir
    private Path folder;

    private SplitReport split(Map<String, String> job, ShiftSettings settings) throws Exception {
        CheckRequest check = CheckRequest.of(COOKBOOK, "cookbook.pdf", JobReader.toJob(JobSettings.of(job)));
        return BindPrep.split(new ShiftRequest(check, folder.resolve("out.pdf"), "out.pdf", settings));
    }

    private List<String> written() throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private static String text(Path file, int page) throws Exception {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            return stripper.getText(document).strip();
        }
    }

    @Test
    void eachVolumeHasItsCoversAndItsPagesAndIsClear() throws Exception {
        SplitReport r = split(
                Map.of(
                        "stock", "coverboard-48",
                        "covers", "front=pages 1-2 on c1s-10pt, back=pages 99-100 on c1s-10pt",
                        "inserts", "31-40 on coverboard-30"),
                ShiftSettings.builtIn());
        assertThat(r.refusals()).isEmpty();
        int n = r.volumes().size();
        assertThat(written())
                .isEqualTo(IntStream.rangeClosed(1, n)
                        .mapToObj(i -> "out-" + i + ".pdf")
                        .toList());
        List<Integer> body = new ArrayList<>();
        int leaves = 0;
        for (int i = 0; i < n; i++) {
            SplitReport.WrittenVolume part = r.volumes().get(i);
            List<Integer> pages = part.pages();
            assertThat(pages).startsWith(1, 2).endsWith(99, 100);
            body.addAll(pages.subList(2, pages.size() - 2));
            Path file = folder.resolve("out-" + (i + 1) + ".pdf");
            for (int at : new int[] {0, 2, pages.size() / 2, pages.size() - 1}) {
                assertThat(text(file, at + 1)).isEqualTo(text(COOKBOOK, pages.get(at)));
            }
            var after = part.made().after();
            assertThat(after.plan().element()).isNotNull();
            assertThat(after.pages())
                    .hasSize(pages.size())
                    .allSatisfy(p -> assertThat(p.verdict().verdict()).isEqualTo(Verdict.CLEAR));
            leaves += after.block().leaves().size();
            assertThat(after.block().leaves().get(0).role()).isEqualTo(Leaf.Role.FRONT_COVER);
        }
        // nothing lost, nothing twice
        assertThat(body).isEqualTo(IntStream.rangeClosed(3, 98).boxed().toList());
        assertThat(leaves).isEqualTo(r.before().block().leaves().size() + 2 * (n - 1));
        // the insert's stock went along with its pages
        assertThat(r.volumes().stream()
                        .flatMap(v -> v.made().after().block().leaves().stream())
                        .filter(l -> l.role() == Leaf.Role.INSERT)
                        .count())
                .isEqualTo(5);
        assertThat(r.notes()).hasSize(2);
    }

    @Test
    void anotherRendererSeesTheSamePages() throws Exception {
        SplitReport r = split(Map.of("stock", "coverboard-48"), ShiftSettings.builtIn());
        List<Integer> last = r.volumes().get(r.volumes().size() - 1).pages();
        assertThat(r.volumes().get(r.volumes().size() - 1).made().moves())
                .as("nothing is near the binding at the end")
                .allMatch(m -> m.nothing());
        Path file = folder.resolve("out-" + r.volumes().size() + ".pdf");
        assertThat(Raster.ofPoppler(file, last.size()).grey())
                .isEqualTo(Raster.ofPoppler(COOKBOOK, 100).grey());
    }

    @Test
    void aBookThatGoesOnOneElementIsNotSplit() throws Exception {
        SplitReport r = split(Map.of("stock", "offset-60"), ShiftSettings.builtIn());
        assertThat(r.volumes()).isEmpty();
        assertThat(r.refusals().toString()).contains("there is nothing to split");
        assertThat(written()).isEmpty();
    }

    @Test
    void whereOneVolumeCannotBeRepairedNoneIsWritten() throws Exception {
        // page 14 would have to move 6.5 mm; no such room, and no scaling allowed
        SplitReport r = split(
                Map.of("stock", "coverboard-48", "pitch", "2:1"),
                ShiftSettings.of(false, null, "50 mm", "100 %", false, false, false));
        assertThat(r.volumes()).isEmpty();
        assertThat(r.refusals().toString()).contains("Volume 1: ");
        assertThat(written()).isEmpty();
    }

    @Test
    void blankBacksAreFilledInEachVolume() throws Exception {
        SplitReport r = split(
                Map.of("stock", "coverboard-48", "inserts", "31-33 on coverboard-30"),
                ShiftSettings.of(false, null, null, null, false, true, false));
        assertThat(r.refusals()).isEmpty();
        assertThat(r.volumes().stream().mapToInt(v -> v.made().blanks().size()).sum())
                .isGreaterThanOrEqualTo(1);
        assertThat(r.volumes())
                .allSatisfy(v -> assertThat(v.made().after().pages().size() % 2).isZero());
    }
}
