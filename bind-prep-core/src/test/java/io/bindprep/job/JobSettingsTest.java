package io.bindprep.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.problem.SettingException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JobSettingsTest {
    @Test
    void theUpperWinsKeyByKey() {
        JobSettings file = JobSettings.of(Map.of("sides", "one", "copies", 3));
        JobSettings both = JobSettings.empty().with("sides", "two").over(file);
        assertThat(both.value("sides")).contains("two");
        assertThat(both.value("copies")).contains(3);
        assertThat(file.value("sides")).as("the lower is unchanged").contains("one");
    }

    @Test
    void oneCoverFromAnOptionKeepsTheOtherOfTheFile() throws SettingException {
        JobSettings option = JobSettings.empty().with("covers.front", "film-75");
        Map<String, String> expected = Map.of("front", "film-75", "back", "tag-150");
        assertThat(option.over(JobSettings.read("covers: {front: c1s-8pt, back: tag-150}", "job.yaml"))
                        .value("covers"))
                .contains(expected);
        assertThat(option.over(JobSettings.of(Map.of("covers", "front=c1s-8pt, back=tag-150")))
                        .value("covers"))
                .contains(expected);
        assertThat(option.with("covers.back", "tag-150").value("covers")).contains(expected);
    }

    @Test
    void aStockIsReplacedWholeSoThatNoNumbersOfTwoStocksMix() throws SettingException {
        JobSettings file = JobSettings.read("stock: {grammage: 80, bulk: 1.25}", "job.yaml");
        JobSettings upper = JobSettings.of(Map.of("stock", Map.of("caliper", "4 mil")));
        assertThat(upper.over(file).value("stock")).contains(Map.of("caliper", "4 mil"));
    }

    @Test
    void coversNoneOverridesTheFile() throws SettingException {
        JobSettings file = JobSettings.read("covers: {front: film-75}", "job.yaml");
        assertThat(JobSettings.empty().with("covers", "none").over(file).value("covers"))
                .contains("none");
    }

    @Test
    void nullsOfACallerCountAsNotGiven() {
        Map<String, Object> given = new HashMap<>();
        given.put("sides", null);
        assertThat(JobSettings.of(given)).isEqualTo(JobSettings.empty());
    }

    @Test
    void laterChangesOfTheCallersMapDoNotReachIn() {
        Map<String, Object> covers = new HashMap<>(Map.of("front", "film-75"));
        JobSettings settings = JobSettings.of(Map.of("covers", covers));
        covers.put("back", "tag-150");
        assertThat(settings.value("covers")).contains(Map.of("front", "film-75"));
    }

    // YAML 1.2, 10.2.2: only true and false are booleans; 1.1 read "no" as false and 3:1 as 181
    @Test
    void yamlIsVersionOneTwo() throws SettingException {
        JobSettings s = JobSettings.read("sides: no\npitch: 3:1\ncopies: 20\nstock: {bulk: 1.25}\n", "job.yaml");
        assertThat(s.value("sides")).contains("no");
        assertThat(s.value("pitch")).contains("3:1");
        assertThat(s.value("copies")).contains(BigInteger.valueOf(20));
        assertThat(s.value("stock")).contains(Map.of("bulk", new BigDecimal("1.25")));
    }

    @Test
    void jsonAndYamlReadAlike() throws SettingException {
        JobSettings json = JobSettings.read(
                "{\"sides\": \"two\",\n\t\"inserts\": [{\"pages\": \"5-8\", \"stock\": \"tag-150\"}]}", "job.JSON");
        JobSettings yaml = JobSettings.read(
                "# a job\nsides: two\ninserts:\n  - pages: 5-8\n    stock: tag-150\n", "bind-prep.yaml");
        assertThat(json).isEqualTo(yaml).hasSameHashCodeAs(yaml);
        assertThat(yaml.value("inserts")).contains(List.of(Map.of("pages", "5-8", "stock", "tag-150")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   \n", "# only a comment\n", "\uFEFF# a mark of the byte order\n"})
    void aFileWithoutSettingsSetsNothing(String text) throws SettingException {
        assertThat(JobSettings.read(text, "job.yaml")).isEqualTo(JobSettings.empty());
    }

    @Test
    void aMarkOfTheByteOrderIsSkipped() throws SettingException {
        assertThat(JobSettings.read("\uFEFFsides: one", "job.yaml").value("sides"))
                .contains("one");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sides: two\\nsides: one | line 2 | gives sides twice",
                "covers:\\n  front: film-75\\n  front: tag-150 | line 3 | gives covers.front twice",
                "stock: &s bond-20\\ncovers: {front: *s} | line 2 | refers to another value by *s",
                "- sides | line 1 | holds no settings by key",
                "just words | line 1 | holds no settings by key",
                "sides: two\\n---\\nsides: one | line 3 | more than one document",
                "sides: two\\ntrim: | line 2 | gives no value for trim",
                "sides: two\\npitch: null | line 2 | gives no value for pitch",
                "sides: \"\" | line 1 | gives no value for sides",
                "sides: [two | line 1 | not well-formed YAML",
                "sides: two\\n  copies: 3 | line 2 | not well-formed YAML"
            })
    void errorsNameFileLineAndFault(String text, String line, String fault) {
        assertThatThrownBy(() -> JobSettings.read(text.replace("\\n", "\n"), "bind-prep.yaml"))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("(bind-prep.yaml, " + line + ", column ")
                .hasMessageContaining(fault)
                .hasMessageNotContaining("\n")
                .hasMessageNotContaining("jackson");
    }

    @Test
    void jsonErrorsNameLineAndColumn() {
        assertThatThrownBy(() -> JobSettings.read("{\"sides\": \"two\",\n \"copies\" 3}", "job.json"))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("(job.json, line 2, column")
                .hasMessageContaining("not well-formed JSON");
    }

    @Test
    void hostileFilesEndInAnError() {
        String bomb = "a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a]\nc: [*b,*b,*b,*b,*b,*b,*b]\n";
        assertThatThrownBy(() -> JobSettings.read(bomb, "job.yaml")).isInstanceOf(SettingException.class);
        assertThatThrownBy(() -> JobSettings.read("a: " + "[".repeat(5000), "job.yaml"))
                .isInstanceOf(SettingException.class);
        assertThatThrownBy(() -> JobSettings.read("{\"a\":".repeat(5000), "job.json"))
                .isInstanceOf(SettingException.class);
        assertThatThrownBy(() -> JobSettings.read("x".repeat(1_000_001), "job.yaml"))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("1000000 characters");
        assertThatThrownBy(() -> JobSettings.read("a: [" + "1,".repeat(60_000) + "1]", "job.yaml"))
                .isInstanceOf(SettingException.class)
                .hasMessageContaining("more than 50000 values");
        assertThatThrownBy(() -> JobSettings.read("{\"copies\": " + "9".repeat(5000) + "}", "job.json"))
                .isInstanceOf(SettingException.class);
    }
}
