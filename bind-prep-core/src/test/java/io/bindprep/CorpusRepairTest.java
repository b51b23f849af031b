package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.pdf.Raster;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.ShiftReport.Result;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ShiftRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A sample of files that nobody here wrote, moved by 6 mm: each is refused with a reason that is known, or qpdf, MuPDF,
 * Ghostscript and Poppler read the copy as well as the file, with the same words and the first page's picture moved.
 * fixtures/oracle/repairs.py does it for all files of any folder.
 */
class CorpusRepairTest {
    private static final Path CORPUS = Path.of(System.getProperty("bindprep.root", ".."))
            .resolve("../shared/corpus")
            .normalize();

    private static final int EVERY = 9;
    private static final long LARGEST = 2_000_000;
    private static final List<String> REASONS = List.of(
            "owner does not allow",
            "digitally signed",
            "are lost",
            "off the outer edge",
            "still finds",
            "not there before");

    @TempDir
    private Path folder;

    private static List<Path> sample() throws IOException {
        try (Stream<Path> all = Files.walk(CORPUS)) {
            List<Path> files = all.filter(
                            f -> f.toString().endsWith(".pdf") && f.toFile().length() < LARGEST)
                    .sorted()
                    .toList();
            return IntStream.range(0, files.size())
                    .filter(i -> i % EVERY == 0)
                    .mapToObj(files::get)
                    .toList();
        }
    }

    @Test
    void everyCopyIsReadByOtherToolsAsTheFileWas() throws Exception {
        assumeTrue(Files.isDirectory(CORPUS), "the corpus is not here");
        for (String tool : List.of("qpdf", "mutool", "gs", "pdftotext", "pdftoppm")) {
            assumeTrue(Raster.onPath(tool), tool + " is not installed");
        }
        List<String> wrong = new ArrayList<>();
        int written = 0;
        for (Path file : sample()) {
            Path out = folder.resolve("out.pdf");
            Files.deleteIfExists(out);
            ShiftReport made = shift(file, out);
            if (made == null) {
                continue;
            }
            if (made.outcome() == Result.REFUSED) {
                boolean known = made.refusals().stream()
                        .anyMatch(said -> REASONS.stream().anyMatch(said::contains));
                if (!known || Files.exists(out)) {
                    wrong.add(file + " is refused: " + made.refusals());
                }
                continue;
            }
            written++;
            faults(file, out).forEach(fault -> wrong.add(file + ": " + fault));
        }
        assertThat(wrong).isEmpty();
        assertThat(written).isGreaterThan(15);
    }

    /** Null where the file cannot be read. */
    private static ShiftReport shift(Path file, Path out) throws Exception {
        try {
            CheckRequest check =
                    CheckRequest.of(file, file.getFileName().toString(), JobReader.toJob(JobSettings.of(Map.of())));
            ShiftSettings gutter = ShiftSettings.of(false, "6 mm", null, null, false, false, false);
            return BindPrep.shift(new ShiftRequest(check, out, "out.pdf", gutter));
        } catch (UnreadableInputException e) {
            return null;
        }
    }

    private List<String> faults(Path file, Path out) throws Exception {
        List<String> faults = new ArrayList<>();
        boolean sound = run("qpdf", "--check", file.toString()).code == 0;
        if (sound && run("qpdf", "--check", out.toString()).code != 0) {
            faults.add("qpdf finds faults");
        }
        for (List<String> tool : List.of(
                List.of(
                        "mutool",
                        "draw",
                        "-q",
                        "-r",
                        "9",
                        "-o",
                        folder.resolve("m%d.png").toString()),
                List.of("gs", "-q", "-dNOPAUSE", "-dBATCH", "-dSAFER", "-sDEVICE=nullpage"))) {
            if (run(tool, file).code == 0 && run(tool, out).code != 0) {
                faults.add(tool.get(0) + " does not read it");
            }
        }
        Ran was = run("pdftotext", "-q", "-raw", file.toString(), "-");
        Ran is = run("pdftotext", "-q", "-raw", out.toString(), "-");
        if (is.code != 0 || sound && was.code == 0 && !words(was).equals(words(is))) {
            faults.add("other words");
        }
        if (sound && was.code == 0) {
            Raster before = Raster.ofPoppler(file, 1);
            Raster after = Raster.ofPoppler(out, 1);
            int unlike = IntStream.of(
                            after.unlike(before, 60, 0),
                            after.unlike(before, -60, 0),
                            after.unlike(before, 0, 60),
                            after.unlike(before, 0, -60),
                            after.unlike(before, 0, 0))
                    .min()
                    .orElseThrow();
            // Poppler sets glyphs in quarter dots, so their edges may differ; MuPDF draws those pages alike dot for dot
            if (unlike > before.dark() / 12 + 10) {
                faults.add(unlike + " dots differ of " + before.dark());
            }
        }
        return faults;
    }

    private static List<String> words(Ran ran) {
        return Arrays.stream(ran.said.split("\\s+")).sorted().toList();
    }

    private record Ran(int code, String said) {}

    private static Ran run(List<String> command, Path file) throws Exception {
        List<String> all = new ArrayList<>(command);
        all.add(file.toString());
        return run(all.toArray(String[]::new));
    }

    private static Ran run(String... command) throws Exception {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(process.waitFor(), said);
    }
}
