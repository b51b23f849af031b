package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.management.OperatingSystemMXBean;
import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files that nobody here wrote, many of them broken, in a Java machine with 512 MB: each ends in a verdict or in a
 * sentence, none in an exception, and none takes more than ten seconds of processor time.
 */
class CorpusTest {
    private static final Path CORPUS = Path.of(System.getProperty("bindprep.root", ".."))
            .resolve("../shared/corpus")
            .normalize();

    private static final Duration MOST = Duration.ofSeconds(10);
    /** 285 pages of scans, each unpacked whole to see its dots: up to 0.1 s a page. */
    private static final Path SCANS = CORPUS.resolve("books/scans-merged.pdf");

    @TempDir
    private Path folder;

    @Test
    void everyFileEndsInAVerdictOrASentence() throws Exception {
        assumeTrue(Files.isDirectory(CORPUS), "the corpus is not here");
        List<String> lines = OwnMachine.run("512m", folder, Run.class);
        assertThat(lines).filteredOn(line -> line.startsWith("WRONG")).isEmpty();
        long read = lines.stream().filter("read"::equals).count();
        long refused = lines.stream().filter("refused"::equals).count();
        assertThat(read).isGreaterThan(refused);
        assertThat(read + refused).isEqualTo(files().size());
    }

    private static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.walk(CORPUS)) {
            return all.filter(f -> f.toString().endsWith(".pdf")).sorted().toList();
        }
    }

    /** The checks, in a machine of their own; tells a line for each file, and what is wrong. */
    static final class Run {
        public static void main(String[] args) throws Exception {
            Job job = JobReader.toJob(JobSettings.empty());
            OperatingSystemMXBean machine = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
            for (Path file : files()) {
                long begun = machine.getProcessCpuTime();
                System.out.println(check(file, job));
                Duration spent = Duration.ofNanos(machine.getProcessCpuTime() - begun);
                if (spent.compareTo(MOST) > 0 && !file.equals(SCANS)) {
                    System.out.println("WRONG " + file + " takes " + spent);
                }
            }
        }

        private static String check(Path file, Job job) {
            try {
                Report report =
                        BindPrep.check(CheckRequest.of(file, file.getFileName().toString(), job));
                boolean unchecked =
                        report.pages().stream().anyMatch(p -> p.verdict().verdict() == Verdict.UNCHECKED);
                return unchecked && !report.failed() ? "WRONG " + file + " passes with a page not checked" : "read";
            } catch (UnreadableInputException e) {
                return e.getMessage().isBlank() || e.remedy().isBlank()
                        ? "WRONG " + file + " is refused without a word"
                        : "refused";
            } catch (Exception | Error e) {
                return "WRONG " + file + ": " + e;
            }
        }
    }
}
