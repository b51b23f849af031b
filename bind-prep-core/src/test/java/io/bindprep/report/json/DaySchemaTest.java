package io.bindprep.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.bindprep.BindPrep;
import io.bindprep.Generated;
import io.bindprep.check.Report;
import io.bindprep.day.DayJob;
import io.bindprep.day.Rates;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.request.Pile;
import io.bindprep.request.PlanRequest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Schemas of a day and of a plan without a PDF, judged by another library. */
class DaySchemaTest {
    private static final String FOLDER = "bind-prep-core/src/main/resources/io/bindprep/schema/";

    private static String text() {
        return Json.text(RecordSchema.ofOne(
                "urn:bindprep:schema:day:" + JsonReport.SCHEMA_VERSION, "JSON of bind-prep day", JsonDay.Root.class));
    }

    private static Schema schema(String text) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text);
    }

    private static Report plan(String name, int leaves, Map<String, ?> job) throws Exception {
        return BindPrep.plan(new PlanRequest(name, JobReader.toJob(JobSettings.of(job)), Pile.ofLeaves(leaves)));
    }

    private static String day() throws Exception {
        Rates rates = Rates.read("strokes-per-minute: 10\nloops-per-spool: {wire 3/16 in: 20000}", "rates.yaml");
        return JsonDay.write(BindPrep.day(
                List.of(
                        new DayJob("a", plan("a", 10, Map.of("trim", "a4"))),
                        new DayJob("b", plan("b", 40, Map.of("trim", "a5", "binding", "coil"))),
                        new DayJob("c", plan("c", 3000, Map.of("trim", "a4")))),
                rates));
    }

    @Test
    void theSchemaIsMadeFromTheRecords() throws Exception {
        Generated.compare(FOLDER + "day.schema.json", text());
    }

    @Test
    void aDayIsValidAndWhatTheSchemaDoesNotNameIsNot() throws Exception {
        String day = day();
        assertThat(schema(text()).validate(day, InputFormat.JSON)).isEmpty();
        for (String at : List.of("", "/jobs/0", "/jobs/0/report", "/heldBack/0", "/supplies/elements/0", "/quote")) {
            ObjectNode drifted = (ObjectNode) JsonMapper.shared().readTree(day);
            ((ObjectNode) drifted.at(at)).put("added", 1);
            assertThat(schema(text()).validate(drifted))
                    .as("added to \"%s\"", at)
                    .isNotEmpty();
        }
    }

    @Test
    void aPlanWithoutAPdfIsAReport() throws Exception {
        String schema = Generated.read(FOLDER + "report.schema.json");
        String json = JsonReport.write(plan("a", 10, Map.of("trim", "a4")), true);
        assertThat(schema(schema).validate(json, InputFormat.JSON)).isEmpty();
    }
}
