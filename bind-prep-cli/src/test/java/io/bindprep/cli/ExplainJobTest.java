package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.job.JobReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ExplainJobTest {
    @TempDir
    private Path folder;

    private Path job;

    @BeforeEach
    void job() throws Exception {
        job = Files.writeString(folder.resolve("job.yaml"), """
                sides: one
                stock: bond-24
                covers:
                  front: film-75
                inserts:
                  - {pages: 5-8, stock: tag-150}
                """);
    }

    private JsonNode row(Cli run, String key) {
        for (JsonNode row : JsonMapper.shared().readTree(run.out()).path("job")) {
            if (row.path("key").asString().equals(key)) {
                return row;
            }
        }
        throw new AssertionError("no " + key + " in " + run.out());
    }

    @Test
    void eachKeyTellsItsValueAndWhoSaysSo() {
        Cli run = Cli.run(
                "check",
                "--explain-job",
                "--format",
                "json",
                "--job",
                job.toString(),
                "--stock",
                "bond-28",
                "--covers",
                "back=coverboard-30");
        assertThat(run.exit()).as(run.err()).isZero();
        assertRow(row(run, "sides"), "one", "job-file", job + ", line 1, column 8");
        assertRow(row(run, "stock"), "bond-28", "option", null);
        assertRow(row(run, "covers.front"), "film-75", "job-file", job + ", line 4, column 10");
        assertRow(row(run, "covers.back"), "coverboard-30", "option", null);
        assertRow(row(run, "inserts"), "[{pages: 5-8, stock: tag-150}]", "job-file", job + ", line 6, column 3");
        assertRow(row(run, "binding"), "wire", "built-in", null);
        assertThat(row(run, "trim").path("value").isNull()).isTrue();
        assertThat(row(run, "trim").path("otherwise").asString()).isEqualTo("that of most pages");
    }

    private static void assertRow(JsonNode row, String value, String from, String place) {
        assertThat(row.path("value").asString()).isEqualTo(value);
        assertThat(row.path("from").asString()).isEqualTo(from);
        assertThat(row.path("place").isNull() ? null : row.path("place").asString())
                .isEqualTo(place);
    }

    @Test
    void everyKeyIsThereOneALine() {
        Cli run = Cli.run("check", "--explain-job");
        assertThat(run.exit()).isZero();
        List<String> keys =
                run.out().lines().map(line -> line.replaceAll(" .*", "")).toList();
        assertThat(keys).containsExactlyElementsOf(JobReader.keys());
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).endsWith("  built in"));
    }

    @Test
    void whatIsWrongIsToldBehindWhereItComesFrom() {
        Cli run = Cli.run("check", "--explain-job", "--job", job.toString(), "--sides", "tow");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).containsPattern("(?m)^sides +tow +option --sides$");
        assertThat(run.err()).contains("--sides", "two");
    }
}
