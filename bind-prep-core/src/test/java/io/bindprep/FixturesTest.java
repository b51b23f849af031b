package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.bindprep.check.Finding;
import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.Mark;
import io.bindprep.marks.Verdict;
import io.bindprep.report.json.JsonReport;
import io.bindprep.request.CheckRequest;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;

/**
 * The fixtures through the whole line. Where the planted marks lie was measured with Ghostscript's bbox device, pdftoppm
 * at 600 dpi and pdftotext -bbox when the fixtures were made: see fixtures/README.md.
 */
class FixturesTest {
    private static final Path FIXTURES =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("fixtures");

    private static Report check(String file, Map<String, String> job) throws Exception {
        return Scenario.registered(
                BindPrep.check(CheckRequest.of(FIXTURES.resolve(file), file, JobReader.toJob(JobSettings.of(job)))));
    }

    private static List<Integer> pages(Report report, Verdict verdict) {
        return report.pages().stream()
                .filter(p -> p.verdict().verdict() == verdict)
                .map(p -> p.facts().page())
                .toList();
    }

    private static Mark nearest(Report report, int page) {
        return report.pages().get(page - 1).verdict().nearest();
    }

    @Test
    void handbookIsClear() throws Exception {
        Report r = check("members-handbook-a4.pdf", Map.of());
        assertThat(pages(r, Verdict.CLEAR)).hasSize(24);
        assertThat(r.failed()).isFalse();
        assertThat(r.block().printedSheets()).isEqualTo(12);
        assertThat(r.plan().row().holes()).hasSize(34);
    }

    @Test
    void cookbookHasTwoHitAndFiveTightPages() throws Exception {
        Report r = check("cookbook-letter.pdf", Map.of("pitch", "3:1"));
        assertThat(pages(r, Verdict.HIT)).containsExactly(14, 27);
        assertThat(pages(r, Verdict.TIGHT)).containsExactly(40, 41, 42, 43, 44);
        assertThat(r.failed()).isTrue();
        assertThat(r.findings())
                .extracting(Finding::rule)
                .contains("text-hit", "line-hit", "text-tight", "trim-undeclared");
        assertThat(nearest(r, 14).nearMm()).isCloseTo(2.98, within(0.03));
        assertThat(nearest(r, 14).alongStartMm()).isCloseTo(219.1, within(1.1));
        assertThat(nearest(r, 14).words()).startsWith("Bones: run a thumb");
        assertThat(nearest(r, 27).nearMm()).isCloseTo(5.00, within(0.03));
        assertThat(nearest(r, 27).alongEndMm()).isCloseTo(150.0, within(0.03));
        assertThat(nearest(r, 40).nearMm()).isCloseTo(8.50, within(0.03));
    }

    @Test
    void plannersTintIsBackgroundAndItsPictureIsHit() throws Exception {
        Report r = check("planner-a5.pdf", Map.of("trim", "a5"));
        assertThat(pages(r, Verdict.HIT)).containsExactly(9);
        assertThat(nearest(r, 9).nearMm()).isCloseTo(3.97, within(0.25));
        assertThat(r.findings())
                .filteredOn(f -> f.rule().equals("background-at-binding-edge"))
                .singleElement()
                .satisfies(f -> assertThat(f.pages()).hasSize(16));
    }

    @Test
    void calendarIsBoundOnTop() throws Exception {
        Report r = check("calendar-a4-landscape.pdf", Map.of("binding-edge", "top", "sides", "one"));
        assertThat(pages(r, Verdict.HIT)).containsExactly(8);
        assertThat(nearest(r, 8).nearMm()).isCloseTo(4.0, within(0.03));
        assertThat(nearest(r, 8).alongStartMm()).isCloseTo(119.4, within(0.1));
        assertThat(r.block().printedSheets()).isEqualTo(13);
    }

    @Test
    void mixedSizesAreFound() throws Exception {
        Report r = check("mixed-sizes.pdf", Map.of("trim", "a4"));
        assertThat(r.findings())
                .filteredOn(f -> f.rule().startsWith("page-"))
                .flatExtracting(Finding::pages)
                .containsExactlyInAnyOrder(7, 9);
    }

    @Test
    void sameBytesInAnyLocaleAndTimeZone() throws Exception {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        String first = JsonReport.write(check("cookbook-letter.pdf", Map.of()), true);
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
                assertThat(JsonReport.write(check("cookbook-letter.pdf", Map.of()), true))
                        .isEqualTo(first);
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
