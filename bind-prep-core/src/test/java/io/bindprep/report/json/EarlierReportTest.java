package io.bindprep.report.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.bindprep.check.Finding;
import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.build.JunitReport;
import io.bindprep.report.build.SarifReport;
import io.bindprep.report.html.HtmlReport;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.text.TextStyle;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An earlier report is what we once wrote, or any file at all. */
class EarlierReportTest {
    private static Scenario old() {
        return Scenario.of(6)
                .hit(3, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "Chapter one")
                .hit(5, MarkKind.TEXT, Verdict.HIT, 12, 5, "Chapter two")
                .hit(2, MarkKind.LINE, Verdict.TIGHT, null, 9, "");
    }

    private static Report now() {
        return Scenario.of(7)
                .hit(4, MarkKind.TEXT, Verdict.HIT, 12, 4.2, "Chapter one")
                .hit(1, MarkKind.IMAGE, Verdict.HIT, 12, 4, "")
                .junk(3)
                .report();
    }

    private static EarlierReport read(String text) throws SettingException {
        return EarlierReport.of(text.getBytes(StandardCharsets.UTF_8), "old.json");
    }

    private static Report compared() throws SettingException {
        return read(JsonReport.write(old().report(), false)).compare(now(), true);
    }

    @Test
    void aReportOfOursIsComparedWith() throws Exception {
        Report report = compared();
        assertThat(report.findings())
                .extracting(f -> f.rule() + " " + f.since().change())
                .containsExactly("image-hit NEW", "text-hit SAME", "header-junk NEW");
        assertThat(report.recheck().sameJob()).isTrue();
        assertThat(report.recheck().fixed()).isOne();
        assertThat(read(JsonReport.write(old().report(), true))
                        .compare(old().report(), true)
                        .findings())
                .extracting(Finding::since)
                .allMatch(s -> s.change() == Finding.Change.SAME);
    }

    @Test
    void everyFormatSaysWhatBecameOfIt() throws Exception {
        Report report = compared();
        assertThat(TextReport.write(report, TextStyle.PLAIN).replaceAll("\\s+", " "))
                .contains(
                        "Since the check of thesis.pdf: 2 new, 1 still there, 1 fixed.",
                        "ERROR Page 1: picture 4.0 mm",
                        "[image-hit, new]",
                        "ERROR Page 4: text 4.2 mm",
                        "[text-hit, still there]",
                        "FIXED line-tight, page 2 of the earlier file",
                        "FIXED text-hit, page 5 of the earlier file");
        assertThat(HtmlReport.write(report, List.of()))
                .contains(
                        "<span class=\"since\">new</span>",
                        "<span class=\"since\">still there</span>",
                        "<b>fixed</b>: <code>line-tight</code>, page 2 of the earlier file.",
                        "<b>fixed on these pages</b>: <code>text-hit</code>, page 5");
        JsonNode json = JsonMapper.shared().readTree(JsonReport.write(report, true));
        assertThat(json.at("/findings/0/since/change").stringValue()).isEqualTo("new");
        assertThat(json.at("/recheck/gone/0/state").stringValue()).isEqualTo("partly-fixed");
        JsonNode sarif = JsonMapper.shared().readTree(SarifReport.write(report)).at("/runs/0/results");
        assertThat(sarif.findValuesAsString("baselineState")).containsExactly("new", "unchanged", "new", "absent");
        try (var in = getClass().getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                            .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                            .validate(SarifReport.write(report), InputFormat.JSON))
                    .isEmpty();
        }
        String junit = JunitReport.write(report);
        assertThat(junit)
                .contains(
                        "failures=\"1\"",
                        "message=\"new; Page 1: picture",
                        "error, let pass: still there; Page 4: text",
                        "<system-out>Fixed, page 2 of the earlier file. It was: Page 2: line");
    }

    @Test
    void aReportOfAFileThatCouldNotBeReadKnowsNothing() throws Exception {
        String unreadable = JsonReport.unreadable(
                "book.pdf",
                new UnreadableInputException(UnreadableInputException.Reason.NOT_PDF, "It is no PDF.", "Ask for one."));
        Report report = read(unreadable).compare(now(), true);
        assertThat(report.findings()).allMatch(f -> f.since().change() == Finding.Change.NEW);
        assertThat(report.failed()).isTrue();
        assertThat(TextReport.write(report, TextStyle.PLAIN).replaceAll("\\s+", " "))
                .contains("could read it, so every finding is new");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{} | is not a report of bind-prep",
                "7 | is not a report of bind-prep",
                "%PDF-1.7 | is not well-formed JSON",
                "[] | holds several reports",
                "{\"version\": \"2.1.0\", \"runs\": []} | is not a report of bind-prep",
                "{\"schemaVersion\": 1, \"outcome\": \"good\"} | is in version 1 of the report format",
                "{\"schemaVersion\": 99} | is in version 99 of the report format",
                "{\"schemaVersion\": 2, \"documentChecked\": false, \"input\": null} | is the report of a plan",
                "{\"schemaVersion\": 2, \"findings\": 1} | is not a report of bind-prep",
                "{\"schemaVersion\": 2, \"findings\": [{}]} | is not a report of bind-prep",
                "{\"schemaVersion\": 2, \"findings\": [{\"rule\":\"a\",\"severity\":\"error\",\"pages\":\"1-9999999\"}]} | is not a",
                "{\"schemaVersion\": 2, \"findings\": [{\"rule\":\"a\",\"severity\":\"error\",\"pages\":\"9-1\"}]} | is not a report"
            })
    void whatIsNotOursIsRefused(String text, String why) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining(why);
    }

    @Test
    void whatIsTooDeepOrTooMuchIsRefused() {
        assertThatThrownBy(() -> read("{\"job\":{\"a\":" + "[".repeat(100_000)))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("is not well-formed JSON");
        String many = "{\"rule\":\"a\",\"severity\":\"error\",\"pages\":\"1-150000\"}";
        assertThatThrownBy(() -> read("{\"schemaVersion\": 2, \"findings\": [" + many + "," + many + "]}"))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("more than 200000 findings and pages");
        String leaves = "{\"a\":[" + "{},".repeat(200_001) + "{}]}";
        for (String member : List.of("\"job\":" + leaves, "\"input\":" + leaves, "\"findings\":[" + leaves + "]")) {
            assertThatThrownBy(() -> read("{\"schemaVersion\": 2, " + member + "}"))
                    .isInstanceOf(SettingException.class)
                    .hasMessageContaining("holds more than a report does");
        }
        assertThatThrownBy(() -> EarlierReport.read(Path.of("no-such.json")))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("no such file");
    }

    @Test
    void wordsOfAHostileReportRewriteNoScreen() throws Exception {
        String text = JsonReport.write(old().report(), false).replace("A line stands", "\\u001B[2J\\u202Ex");
        Report report = read(text).compare(now(), true);
        assertThat(report.recheck().gone()).noneMatch(g -> g.message().matches("(?s).*[\\p{Cc}\\p{Cf}].*"));
    }

    @Test
    void anotherJobIsToldOf() throws Exception {
        Report before = old().copies(7).report();
        Report report = read(JsonReport.write(before, false)).compare(now(), true);
        assertThat(report.recheck().sameJob()).isFalse();
        assertThat(TextReport.write(report, TextStyle.PLAIN).replaceAll("\\s+", " "))
                .contains("The job differs");
    }
}
