package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.UnreadableInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Files that nobody here wrote, many of them broken: each ends in a verdict or in a sentence, none in an exception. */
class CorpusTest {
    private static final Path BROKEN =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("../shared/corpus/broken");

    @Test
    void everyFileEndsInAVerdictOrASentence() throws Exception {
        assumeTrue(Files.isDirectory(BROKEN), "the corpus is not here");
        Job job = JobReader.toJob(JobSettings.empty());
        List<Path> files;
        try (Stream<Path> all = Files.walk(BROKEN)) {
            files = all.filter(f -> f.toString().endsWith(".pdf")).sorted().toList();
        }
        List<String> wrong = new ArrayList<>();
        int read = 0;
        for (Path file : files) {
            try {
                Report report =
                        BindPrep.check(CheckRequest.of(file, file.getFileName().toString(), job));
                read++;
                boolean unread =
                        report.pages().stream().anyMatch(p -> p.verdict().verdict() == Verdict.UNREAD);
                if (unread && !report.failed()) {
                    wrong.add(file + " passes with an unread page");
                }
            } catch (UnreadableInputException e) {
                if (e.getMessage().isBlank() || e.remedy().isBlank()) {
                    wrong.add(file + " is refused without a word");
                }
            } catch (Exception e) {
                wrong.add(file + ": " + e);
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(read).isGreaterThan(files.size() / 2);
    }
}
