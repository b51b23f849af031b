package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.Verdict;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.Raster;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.RefusalReason;
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
    private static final double GUTTER_MM = 6;
    /** Of some million; pictures are set in whole dots by one of the two. */
    private static final int FEW_DOTS = 100;

    private static final long LARGEST = 2_000_000;

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
                if (Files.exists(out)) {
                    wrong.add(file + " is refused and written");
                }
                wrong.addAll(unfounded(file, made));
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

    /** Refusals that another tool does not bear out, or that no tool here can judge. */
    private static List<String> unfounded(Path file, ShiftReport made) throws Exception {
        List<String> unfounded = new ArrayList<>();
        for (RefusalReason reason : made.reasons()) {
            boolean founded = switch (reason) {
                case OWNER ->
                    run("qpdf", "--show-encryption", file.toString()).said.contains("modify anything: not allowed");
                case SIGNED ->
                    Files.readString(file, StandardCharsets.ISO_8859_1).contains("/ByteRange");
                case LOST_PAGES -> run("qpdf", "--check", file.toString()).code != 0;
                case OFF_THE_PAGE -> printsNearTheOuterEdge(file, made);
                case STILL_NEAR, NEW_FAULT -> made.after() != null && worse(made);
                default -> false;
            };
            if (!founded) {
                unfounded.add(file + " is refused, which nothing bears out: " + made.reasons() + made.refusals());
            }
        }
        return unfounded;
    }

    /** Poppler draws ink within the gutter of the outer edge of some page. */
    private static boolean printsNearTheOuterEdge(Path file, ShiftReport made) throws Exception {
        for (PageReport page : made.before().pages()) {
            PageEdge outer = page.place().bindingEdge().opposite();
            if (Raster.ofPoppler(file, page.facts().page()).ink(outer) <= GUTTER_MM + 0.2) {
                return true;
            }
        }
        return false;
    }

    /** Content beside the holes would be in them. */
    private static boolean worse(ShiftReport made) {
        long before = hit(made.before());
        return made.after() != null && hit(made.after()) > before;
    }

    private static long hit(Report report) {
        return report.pages().stream()
                .filter(p -> p.verdict().verdict() == Verdict.HIT)
                .count();
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
            int poppler = astray(Raster.ofPoppler(file, 1), Raster.ofPoppler(out, 1));
            int mupdf = astray(Raster.ofMuPdf(file, 1), Raster.ofMuPdf(out, 1));
            if (Math.min(poppler, mupdf) > 0 || Math.max(poppler, mupdf) > FEW_DOTS) {
                faults.add(poppler + " dots are elsewhere by Poppler, " + mupdf + " by MuPDF");
            }
        }
        return faults;
    }

    private static int astray(Raster before, Raster after) {
        int gutter = (int) (GUTTER_MM * Raster.PER_MM);
        return IntStream.of(
                        after.astray(before, gutter, 0),
                        after.astray(before, -gutter, 0),
                        after.astray(before, 0, gutter),
                        after.astray(before, 0, -gutter),
                        after.astray(before, 0, 0))
                .min()
                .orElseThrow();
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
