package io.bindprep.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.bindprep.Generated;
import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.PunchFile;
import io.bindprep.catalogue.PunchText;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.job.JobText;
import io.bindprep.problem.SettingException;
import io.bindprep.table.NamedText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas of job and punch files: made from what describes their keys, judged by another library, at one with the readers. */
class SettingSchemaTest {
    private static final Path ROOT = Path.of(System.getProperty("bindprep.root"));
    private static final String FOLDER = "bind-prep-core/src/main/resources/io/bindprep/schema/";

    private static String job() {
        return ShapeSchema.of("urn:bindprep:schema:job:1", "job file of bind-prep", JobReader.descriptions());
    }

    private static String punch() {
        return ShapeSchema.of("urn:bindprep:schema:punch:1", "punch file of bind-prep", PunchFile.descriptions());
    }

    /** Faults that a schema finds in a YAML file, in words. */
    private static List<String> wrong(String schema, String yaml) {
        Schema rules = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema);
        return rules.validate(ShapeSchema.yaml(yaml).toString(), InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    private static void readJob(String yaml) throws SettingException {
        JobSettings settings = JobSettings.read(yaml, "job.yaml");
        JobReader.toJob(
                settings,
                JobFiles.read(
                        settings,
                        (name, beside) -> name.endsWith(".csv")
                                ? "id,kind,caliper,tolerance\n" + name.replace(".csv", "") + ",paper,0.1 mm,0.01 mm\n"
                                : "pattern: W3_1i-square-0t\npins: 34\n"));
    }

    private static void readPunch(String yaml) throws SettingException {
        PunchFile.read(new NamedText("bench.yaml", yaml), Catalogue.builtIn());
    }

    @Test
    void theSchemasAreMadeFromTheDescriptions() throws IOException {
        Generated.compare(FOLDER + "job.schema.json", job());
        Generated.compare(FOLDER + "punch.schema.json", punch());
    }

    @Test
    void theSchemasAreOnesByTheirOwnRules() {
        Schema rules = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));
        for (String schema : List.of(job(), punch())) {
            assertThat(rules.validate(schema, InputFormat.JSON)).isEmpty();
        }
    }

    @Test
    void jobsThatAreReadAreValid() throws Exception {
        String readme = Files.readString(ROOT.resolve("bind-prep-cli/GUIDE.md"));
        Matcher block = Pattern.compile("(?ms)^```yaml\\R(.*?)^```").matcher(readme);
        // other yaml stands before it: costs of a day
        assertThat(block.find(readme.indexOf("## The job file"))).isTrue();
        List<String> jobs = List.of(
                JobText.builtIn(), block.group(1), Files.readString(ROOT.resolve("fixtures/cookbook-job.yaml")));
        for (String yaml : jobs) {
            readJob(yaml);
            assertThat(wrong(job(), yaml)).as(yaml).isEmpty();
        }
    }

    @Test
    void everyExampleIsValidByItsSchema() throws Exception {
        for (KeyDescription key : JobReader.descriptions()) {
            for (String example : key.examples()) {
                assertThat(wrong(job(), key.key() + ": " + example))
                        .as(key + example)
                        .isEmpty();
            }
        }
        for (KeyDescription key : PunchFile.descriptions()) {
            for (String example : key.examples()) {
                String others = key.required() ? "" : "pattern: W3_1i-square-0t\npins: 40\n";
                String yaml = key.key().equals("pins")
                        ? "pattern: W3_1i-square-0t\npins: " + example
                        : key.required() ? "pins: 40\npattern: " + example : others + key.key() + ": " + example;
                readPunch(yaml);
                assertThat(wrong(punch(), yaml)).as(yaml).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "copies: 0",
                "copies: many",
                "sides: three",
                "bound-egde: left",
                "stock: {colour: red}",
                "stock: {kind: leather}",
                "covers: {middle: bond-20}",
                "covers: {front: {pages: 1-2}}",
                "inserts: [{pages: 5-8}]",
                "inserts: [{pages: eight, stock: tag-150}]",
                "punching-tolerance: 1",
                "punching-tolerance: 1 furlong",
                "binding-margin: wide",
                "hanger: {thumb-cut: 60 x 20 mm}",
                "fail-on: note",
                "tables: [[a.csv]]"
            })
    void whatIsWrongIsWrongForSchemaAndReader(String yaml) {
        assertThat(wrong(job(), yaml)).isNotEmpty();
        assertThat(catchThrowable(() -> readJob(yaml))).isInstanceOf(SettingException.class);
    }

    @Test
    void noKeyTakesAMapOfNonsense() {
        for (KeyDescription key : JobReader.descriptions()) {
            assertThat(wrong(job(), key.key() + ": {nonsense: 1}"))
                    .as(key.key())
                    .isNotEmpty();
        }
    }

    @Test
    void punchesThatAreReadAreValid() throws Exception {
        String shop = Files.readString(ROOT.resolve("fixtures/shop-punch.yaml"));
        readPunch(shop);
        assertThat(wrong(punch(), shop)).isEmpty();
        for (var built : Catalogue.builtIn().punches().all()) {
            String yaml = PunchText.of(built);
            readPunch(yaml);
            assertThat(wrong(punch(), yaml)).as(yaml).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pims: 3",
                "first-pin: left",
                "first-pin: 5",
                "pullable: some",
                "pullable: [x]",
                "depths: 5 mm",
                "depths: {}",
                "depths: {a: 5}",
                "lift: {paper: 20 sheets}",
                "lift: {thickness: 1 mm, wool: 1 mm}",
                "lift: {thickness: 1 mm, film: few}",
                "longest-edge: 5 km",
                "elements: all",
                "measured: 1 mm",
                "measured: {side: 1 mm}",
                "measured: {tilt: 1 mm +- 1 mm}"
            })
    void whatIsWrongInAPunchIsWrongForSchemaAndReader(String line) {
        String yaml = "pattern: W3_1i-square-0t\npins: 34\n" + line;
        assertThat(wrong(punch(), yaml)).isNotEmpty();
        assertThat(catchThrowable(() -> readPunch(yaml))).isInstanceOf(SettingException.class);
        assertThat(wrong(punch(), "pins: 34")).anyMatch(w -> w.contains("pattern"));
    }
}
