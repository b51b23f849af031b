package io.bindprep.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.bindprep.problem.SettingException;
import java.util.List;
import org.junit.jupiter.api.Test;

class AcceptanceTextTest {
    private static final Acceptance ONE =
            new Acceptance("text-tight", "14, 27", "a \"rule\": C:\\x # no", "J. Doe", "1234567890123456");
    private static final Acceptance OTHER = new Acceptance("image-ppi", "", "web picture", "J. Doe", "00ff");

    @Test
    void everyLineStaysAndWhatIsAddedIsReadBack() throws Exception {
        String before = "# our book\nstock: bond-20   # cheap\n\nsides: two\n";
        String once = AcceptanceText.added(before, List.of(ONE), "job.yaml");
        assertThat(once).startsWith(before).contains("accept:\n  - finding: text-tight\n");
        String twice = AcceptanceText.added(once + "\n# the end\ncopies: 3\n", List.of(OTHER), "job.yaml");
        assertThat(twice).startsWith(before).endsWith("\n# the end\ncopies: 3\n");
        Job job = JobReader.toJob(JobSettings.read(twice, "job.yaml"));
        assertThat(job.accepted()).containsExactly(ONE, OTHER);
        assertThat(job.copies()).isEqualTo(3);
    }

    @Test
    void anEmptyFileAndNoneBecomeAList() throws Exception {
        for (String text : List.of(
                "",
                "accept: none # so far\ncopies: 2\n",
                "accept:   # yet\n- {finding: a, reason: b," + " who: c, seen: d}\ncopies: 2\n")) {
            String made = AcceptanceText.added(text, List.of(ONE), "job.yaml");
            assertThat(JobReader.toJob(JobSettings.read(made, "job.yaml")).accepted())
                    .contains(ONE);
        }
    }

    @Test
    void aListOnOneLineIsRefused() {
        assertThatThrownBy(() -> AcceptanceText.added("accept: []\n", List.of(ONE), "job.yaml"))
                .isInstanceOf(SettingException.class);
        assertThatThrownBy(() -> AcceptanceText.added("stock: [\n", List.of(ONE), "job.yaml"))
                .isInstanceOf(SettingException.class);
    }
}
