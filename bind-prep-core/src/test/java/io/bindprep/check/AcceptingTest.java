package io.bindprep.check;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.job.Acceptance;
import io.bindprep.job.FailOn;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.report.build.JunitReport;
import io.bindprep.report.build.SarifReport;
import io.bindprep.report.html.HtmlReport;
import io.bindprep.report.json.JsonReport;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.text.TextStyle;
import io.bindprep.report.words.VerdictSentence;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class AcceptingTest {
    private static Scenario scenario() {
        return book(3, 4.2, "Chapter one");
    }

    private static Scenario book(int page, double nearMm, String words) {
        return Scenario.of(6).hit(page, MarkKind.TEXT, Verdict.HIT, 12, nearMm, words);
    }

    private static Finding hit(Report report) {
        return report.findings().stream()
                .filter(f -> f.rule().equals("text-hit"))
                .findFirst()
                .orElseThrow();
    }

    private static Acceptance acceptance() {
        Report report = scenario().report();
        return new Acceptance("text-hit", "3", "printed so for years", "J. Doe", report.seen(hit(report)));
    }

    @Test
    void whatIsAcceptedFailsNothingAndIsStillReported() {
        assertThat(scenario().report().outcome()).isEqualTo(Outcome.FINDINGS);
        Report report = scenario().accepting(acceptance()).report();
        assertThat(report.outcome()).isEqualTo(Outcome.GOOD);
        assertThat(report.failed()).isFalse();
        assertThat(hit(report).severity()).isEqualTo(Severity.ERROR);
        assertThat(hit(report).accepted()).isEqualTo(new Finding.Accepted("printed so for years", "J. Doe"));
        assertThat(report.findings()).noneMatch(f -> f.rule().equals(Accepting.ID));
        assertThat(VerdictSentence.of(report)).doesNotContain("Do not print").contains("Accepted: 1 finding");
    }

    @ParameterizedTest
    @CsvSource({"3, 3.9, Chapter one", "3, 4.2, Chapter two", "4, 4.2, Chapter one"})
    void whatMovesGetsWorseOrIsNewFailsAgain(int page, double nearMm, String words) {
        Report report = book(page, nearMm, words).accepting(acceptance()).report();
        assertThat(report.failed()).isTrue();
        assertThat(hit(report).accepted()).isNull();
        assertThat(report.findings())
                .filteredOn(f -> f.rule().equals(Accepting.ID))
                .singleElement()
                .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.WARNING))
                .satisfies(f -> assertThat(f.message()).contains("text-hit, page 3", "J. Doe"));
    }

    @Test
    void aPageThatJoinsAnAcceptedFindingFailsAgain() {
        Report report = scenario()
                .hit(5, MarkKind.TEXT, Verdict.HIT, 12, 6, "another")
                .accepting(acceptance())
                .report();
        assertThat(report.failed()).isTrue();
    }

    @Test
    void anAcceptanceThatMeetsNothingIsAWarningWhichFailsWhereWarningsDo() {
        Report report = Scenario.of(6).accepting(acceptance()).report();
        assertThat(report.failed()).isFalse();
        assertThat(report.findings()).extracting(Finding::rule).contains(Accepting.ID);
        Acceptance several = new Acceptance("text-hit", "2, 4", "r", "w", "0123456789abcdef");
        assertThat(Scenario.of(6).accepting(several).report().findings())
                .extracting(Finding::message)
                .contains("An acceptance meets no finding: text-hit, pages 2, 4, accepted by \"w\".");
        assertThat(Scenario.of(6)
                        .failOn(FailOn.WARNING)
                        .accepting(acceptance())
                        .report()
                        .failed())
                .isTrue();
    }

    @Test
    void nobodyCanAcceptAPageThatWasNotRead() {
        Report open = Scenario.of(6).unchecked(2, "it is broken").report();
        Finding finding = open.findings().get(0);
        assertThat(finding.rule()).isEqualTo(UncheckedRule.ID);
        assertThat(open.acceptable()).doesNotContain(finding);
        Report report = Scenario.of(6)
                .unchecked(2, "it is broken")
                .accepting(new Acceptance(UncheckedRule.ID, "2", "r", "w", open.seen(finding)))
                .report();
        assertThat(report.failed()).isTrue();
        assertThat(report.findings()).anyMatch(f -> f.message().contains("cannot be accepted"));
    }

    @Test
    void everyFormatSaysSo() {
        Report report = scenario().accepting(acceptance()).report();
        assertThat(TextReport.write(report, TextStyle.PLAIN))
                .contains("ACCEPTED  Page 3: text", "[text-hit]", "Accepted by J. Doe: printed so for years");
        assertThat(HtmlReport.write(report, List.of()))
                .contains("class=\"accepted\"", "Accepted by J. Doe: printed so for years");
        JsonNode json = JsonMapper.shared().readTree(JsonReport.write(report, true));
        JsonNode found = json.at("/findings/0");
        assertThat(found.at("/accepted/who").stringValue()).isEqualTo("J. Doe");
        assertThat(found.get("seen").stringValue()).isEqualTo(acceptance().seen());
        JsonNode sarif = JsonMapper.shared().readTree(SarifReport.write(report)).at("/runs/0/results/0");
        assertThat(sarif.at("/suppressions/0/kind").stringValue()).isEqualTo("external");
        assertThat(sarif.at("/suppressions/0/status").stringValue()).isEqualTo("accepted");
        assertThat(sarif.at("/suppressions/0/justification").stringValue()).contains("J. Doe");
        assertThat(sarif.at("/partialFingerprints/bindPrepSeen~1v1").stringValue())
                .isEqualTo(acceptance().seen());
        String junit = JunitReport.write(report);
        assertThat(junit).contains("failures=\"0\"", "<system-out>Accepted by J. Doe: printed so for years");
    }
}
