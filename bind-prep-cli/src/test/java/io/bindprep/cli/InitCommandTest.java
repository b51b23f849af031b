package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.job.JobReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InitCommandTest {
    private static final String HANDBOOK = Cli.fixture("members-handbook-a4.pdf");

    @TempDir
    private Path folder;

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void theJobFileIsAcceptedAsItIsAndAsksForWhatNoJobFileDoes() throws Exception {
        Cli init = Cli.run("init", at("bind-prep.yaml"));
        assertThat(init.exit()).as(init.err()).isZero();
        assertThat(init.out()).contains("bind-prep check --job " + at("bind-prep.yaml"));
        String text = Files.readString(folder.resolve("bind-prep.yaml"));
        for (String key : JobReader.keys()) {
            assertThat(text).containsPattern("(?m)^(# )?" + key + ": ");
        }
        Cli with = Cli.run("check", "--format", "json", "--job", at("bind-prep.yaml"), HANDBOOK);
        Cli without = Cli.run("check", "--format", "json", HANDBOOK);
        assertThat(with.exit()).as(with.err()).isEqualTo(without.exit()).isIn(0, 1);
        assertThat(withoutSource(with)).isEqualTo(withoutSource(without));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"generic-W3_1i-square-0t", "generic-P16_9i-rect-0t", "generic-R2m-ISO", "rfc3806-22-hole-us"})
    void thePunchFileIsAcceptedAsItIs(String like) throws Exception {
        Cli init = Cli.run("init", "--punch", "--like", like, at("bench.yaml"));
        assertThat(init.exit()).as(init.err()).isZero();
        String binding = like.contains("P16") ? "comb" : like.contains("R2m") ? "rings" : "wire";
        Cli check = Cli.run("check", "--format", "json", "--binding", binding, "--punch", at("bench.yaml"), HANDBOOK);
        assertThat(check.exit()).as(check.err()).isIn(0, 1);
        assertThat(check.out()).contains("\"punch\" : \"bench\"");
        Cli builtIn = Cli.run("check", "--format", "json", "--binding", binding, "--punch", like, HANDBOOK);
        assertThat(plan(check)).isEqualTo(plan(builtIn));
    }

    // sources and reasons tell whether the job said so
    private static List<String> withoutSource(Cli run) {
        return run.out()
                .lines()
                .filter(l -> !l.contains("\"source\"") && !l.contains("\"because\""))
                .toList();
    }

    // places of the holes, without the punch's name and the reasons that tell of it
    private static List<String> plan(Cli run) {
        return run.out()
                .lines()
                .filter(l -> l.matches(".*\"(holes|firstHoleMm|pulledPins|minimumWebMm|edgeDistanceMm|holeZoneMm)\".*"))
                .toList();
    }

    @Test
    void aFileThatIsThereIsNotWrittenOverUnlessForced() throws Exception {
        Path file = Files.writeString(folder.resolve("bind-prep.yaml"), "copies: 7\n");
        Cli refused = Cli.run("init", file.toString());
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.err()).contains("is there already", "--force");
        assertThat(file).hasContent("copies: 7\n");
        assertThat(Cli.run("init", "--force", file.toString()).exit()).isZero();
        assertThat(Files.readString(file)).contains("copies: 1\n");
    }

    @Test
    void whatCannotBeWrittenOrReadBackIsRefused() {
        assertThat(Cli.run("init", at("no-folder/bind-prep.yaml")).exit()).isEqualTo(2);
        assertThat(Cli.run("init", at("bind-prep.json")).err()).contains("ends in .yaml");
        assertThat(Cli.run("init", at("bind-prep")).err()).contains("ends in .yaml");
        assertThat(Cli.run("init", "--punch", "--like", "none", at("p.yaml")).err())
                .contains("no punch \"none\"");
        assertThat(Cli.run("init", "--like", "generic-R2m-ISO", at("p.yaml")).err())
                .contains("--like goes with --punch");
        assertThat(folder).isEmptyDirectory();
    }
}
