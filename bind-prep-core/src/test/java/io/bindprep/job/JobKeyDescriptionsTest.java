package io.bindprep.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.setting.KeyDescription;
import io.bindprep.setting.ValueShape;
import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Descriptions of keys say what the reader does with them. */
class JobKeyDescriptionsTest {
    static Stream<KeyDescription> keys() {
        return JobReader.descriptions().stream();
    }

    private static Job job(KeyDescription key, String value) throws Exception {
        JobSettings settings = JobSettings.read(key.key() + ": " + value + "\n", "job.yaml");
        return JobReader.toJob(settings, JobFiles.read(settings, (name, beside) -> file(name)));
    }

    // files of an example: a table of one stock under the file's own name, or a punch
    private static String file(String name) {
        return name.endsWith(".csv")
                ? "id,kind,caliper,tolerance\n" + name.replace(".csv", "") + ",paper,0.1 mm,0.01 mm\n"
                : "pattern: W3_1i-square-0t\npins: 34\n";
    }

    @ParameterizedTest
    @MethodSource("keys")
    void everyExampleIsRead(KeyDescription key) throws Exception {
        assertThat(key.examples()).isNotEmpty();
        for (String example : key.examples()) {
            assertThat(job(key, example)).as(example).isNotNull();
        }
    }

    @ParameterizedTest
    @MethodSource("keys")
    void theBuiltInValueIsTheOneThatHoldsWhereNothingIsSaid(KeyDescription key) throws Exception {
        if (key.builtIn() != null) {
            assertThat(withoutSources(job(key, key.builtIn())))
                    .isEqualTo(withoutSources(JobReader.toJob(JobSettings.empty())));
        }
    }

    @Test
    void everyNameOfAKeyIsDescribedOnce() throws Exception {
        List<String> names = Arrays.stream(JobKeys.class.getDeclaredFields())
                .filter(f -> f.getType() == String.class)
                .map(JobKeyDescriptionsTest::text)
                .toList();
        assertThat(JobReader.keys()).containsExactlyInAnyOrderElementsOf(names);
    }

    @Test
    void wordsOfAKeyAreAllThatItsReaderKnows() {
        assertThat(keys().filter(k -> k.shape() instanceof ValueShape.Words).map(KeyDescription::key))
                .containsExactly("sides", "binding-edge", "binding", "fail-on", "units");
    }

    private static String text(Field f) {
        try {
            return (String) f.get(null);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    // the source says whether the job named them
    private static String withoutSources(Job job) {
        return job.toString()
                .replace(job.stock().source(), "")
                .replace(job.supply().overs().source(), "");
    }
}
