package io.bindprep.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.bindprep.BindPrep;
import io.bindprep.Generated;
import io.bindprep.check.Report;
import io.bindprep.check.Scenario;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import io.bindprep.unit.Length;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The published schema of the JSON report: made from the records, and true of what is written (judged by another library). */
class ReportSchemaTest {
    private static final Path FIXTURES = Path.of(System.getProperty("bindprep.root"), "fixtures");
    private static final String FILE = "bind-prep-core/src/main/resources/io/bindprep/schema/report.schema.json";

    private static String text() {
        return Json.text(RecordSchema.of(
                "urn:bindprep:schema:report:" + JsonReport.SCHEMA_VERSION,
                "JSON report of bind-prep check",
                JsonChecked.class,
                JsonUnreadable.class,
                JsonUnchecked.class));
    }

    private static Schema schema() {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text());
    }

    private static void assertValid(String json) {
        assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
    }

    @Test
    void theSchemaIsMadeFromTheRecords() throws IOException {
        Generated.compare(FILE, text());
    }

    @Test
    void theSchemaIsOneByItsOwnRules() {
        Schema rules = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
        assertThat(rules.validate(text(), InputFormat.JSON)).isEmpty();
        assertThat(rules.validate(text().replace("\"minItems\" : 2", "\"minItems\" : -2"), InputFormat.JSON))
                .isNotEmpty();
    }

    static Stream<Path> fixtures() throws IOException {
        List<Path> all;
        try (Stream<Path> files = Files.list(FIXTURES)) {
            all = files.filter(f -> f.toString().endsWith(".pdf")).sorted().toList();
        }
        assertThat(all).isNotEmpty();
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("fixtures")
    void everyFixturesReportIsValid(Path file) throws Exception {
        String name = file.getFileName().toString();
        try {
            Report report = BindPrep.check(CheckRequest.of(file, name, JobReader.toJob(JobSettings.of(Map.of()))));
            assertValid(JsonReport.write(report, true));
            assertValid("[" + JsonReport.write(report, false) + "]");
        } catch (UnreadableInputException e) {
            assertValid(JsonReport.unreadable(name, e));
        }
    }

    @Test
    void linesAreTheSameReportsOnOneLineEach() {
        Report report = Scenario.of(2)
                .hit(1, MarkKind.TEXT, Verdict.HIT, 3, 4, "two\nlines")
                .report();
        UnreadableInputException unreadable =
                new UnreadableInputException(UnreadableInputException.Reason.EMPTY, "It is empty.", "Ask.");
        assertLine(JsonReport.line(report, true), JsonReport.write(report, true));
        assertLine(JsonReport.unreadableLine("a.pdf", unreadable), JsonReport.unreadable("a.pdf", unreadable));
        String setting = JsonReport.wrongSettingLine(
                "a.pdf", new SettingException("pitch", "5:1", "no such pitch", "Take another.", List.of("3:1")));
        assertLine(setting, setting);
        String internal = JsonReport.internalErrorLine("a\nb.pdf", "first\nsecond");
        assertLine(internal, internal);
    }

    private static void assertLine(String line, String same) {
        assertValid(line);
        assertThat(line).hasLineCount(1).endsWith("}\n");
        assertThat(JsonMapper.shared().readTree(line))
                .isEqualTo(JsonMapper.shared().readTree(same));
    }

    @Test
    void whatNoFixtureHasIsValidToo() {
        assertValid(JsonReport.write(
                Scenario.of(4)
                        .covers()
                        .noElement()
                        .weightUnknown()
                        .fixed(1)
                        .trim("A4", Length.ofMm(210), Length.ofMm(297))
                        .hit(1, MarkKind.TEXT, Verdict.HIT, 3, 4, "words")
                        .hit(2, MarkKind.ANNOTATION, Verdict.TIGHT, null, 9, "")
                        .unchecked(3, "cut short")
                        .report(),
                true));
        assertValid(JsonReport.write(Scenario.of(1).noHoles().report(), true));
    }

    @Test
    void whatTheSchemaDoesNotNameIsInvalid() {
        ObjectNode report = (ObjectNode)
                JsonMapper.shared().readTree(JsonReport.write(Scenario.of(2).report(), true));
        assertThat(schema().validate(report)).isEmpty();
        for (String at : List.of("", "/input", "/job", "/job/stock", "/stack", "/plan", "/verdicts", "/pages/0")) {
            ObjectNode drifted = report.deepCopy();
            ((ObjectNode) drifted.at(at)).put("added", 1);
            assertThat(schema().validate(drifted)).as("added to \"%s\"", at).isNotEmpty();
        }
        ObjectNode lacking = report.deepCopy();
        ((ObjectNode) lacking.get("plan")).remove("pitchMm");
        assertThat(schema().validate(lacking)).isNotEmpty();
        ObjectNode otherWord = report.deepCopy();
        otherWord.put("outcome", "fine");
        assertThat(schema().validate(otherWord)).isNotEmpty();
    }
}
