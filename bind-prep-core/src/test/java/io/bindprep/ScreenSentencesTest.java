package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.FindingKind;
import io.bindprep.check.FindingKinds;
import io.bindprep.check.Report;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.text.TextStyle;
import io.bindprep.request.CheckRequest;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences on the screen have at most 25 words: the rule of this house, for readers in a hurry. */
class ScreenSentencesTest {
    private static final int MOST_WORDS = 25;
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures");

    /** Sentences end with a stop and a capital, quote or bracket after it, or with the line. */
    private static List<String> tooLong(String text) {
        return text.lines()
                .flatMap(l -> Arrays.stream(l.split("(?<=[.?!])\\s+(?=[\\p{Lu}\\d\\[\"])")))
                .filter(s -> s.strip().split("\\s+").length > MOST_WORDS)
                .toList();
    }

    @Test
    void theRuleFindsALongSentence() {
        String word = "Word ";
        assertThat(tooLong("Short. " + word.repeat(26))).hasSize(1);
        assertThat(tooLong("Short. " + word.repeat(25))).isEmpty();
    }

    @Test
    void everyKindOfFinding() {
        SoftAssertions all = new SoftAssertions();
        for (FindingKind kind : FindingKinds.all()) {
            all.assertThat(tooLong(kind.meaning())).as(kind.id()).isEmpty();
            all.assertThat(tooLong(kind.remedy())).as(kind.id()).isEmpty();
            // a remedy is something to do; the key stands in brackets behind it
            all.assertThat(kind.remedy()).as(kind.id()).doesNotMatch("(?:Set|Give) [a-z-]+:? .*");
        }
        all.assertAll();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "calendar-a4-landscape",
                "cookbook-letter",
                "junk-before-header",
                "members-handbook-a4",
                "mixed-sizes",
                "owner-only",
                "planner-a5"
            })
    void everyReportOfTheFixtures(String name) throws Exception {
        SoftAssertions all = new SoftAssertions();
        for (Map<String, String> job : List.of(
                Map.<String, String>of(),
                Map.of("stock", "offset-60", "pitch", "3:1", "copies", "25"),
                Map.of("binding", "coil", "units", "both", "press-sheet", "sra3"),
                Map.of("binding", "comb", "stock", "coverboard-48"),
                Map.of("binding", "rings", "punching-tolerance", "3 mm", "binding-margin", "4 mm"),
                Map.of("stock", "coverboard-48", "binding-edge", "top", "hanger", "90 mm"),
                Map.of("stock", "coverboard-48", "pitch", "3:1", "trim", "A4", "fold-outs", "1-2 in 3 panels"),
                Map.of("binding-edge", "right", "tabs", "before 1 on tag-150", "covers", "front=film-75"))) {
            Report report = BindPrep.check(CheckRequest.of(
                    FIXTURES.resolve(name + ".pdf"), name + ".pdf", JobReader.toJob(JobSettings.of(job))));
            String text = TextReport.write(report, new TextStyle(false, 10_000));
            all.assertThat(tooLong(text)).as(job.toString()).isEmpty();
            all.assertThat(report.findings().stream().flatMap(f -> tooLong(f.message() + "\n" + f.remedy()).stream()))
                    .as(job.toString())
                    .isEmpty();
        }
        all.assertAll();
    }
}
