package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check --since}. */
class SinceCommandTest {
    private static final String HIT = Cli.fixture("cookbook-letter.pdf");

    @TempDir
    private Path temp;

    private Path old;

    @BeforeEach
    void checkedBefore() {
        old = temp.resolve("cookbook-letter.json");
        assertThat(Cli.run("check", "--write", "json=" + old, HIT).exit()).isEqualTo(1);
    }

    @Test
    void whatWasThereIsToldApartAndFailsNothingNew() {
        Cli again = Cli.run("check", "--since", old.toString(), HIT);
        assertThat(again.exit()).isEqualTo(1);
        assertThat(again.out()).contains("still there", "the same file, byte for byte");
        Cli onlyNew = Cli.run("check", "--since", old.toString(), "--fail-on-new", HIT);
        assertThat(onlyNew.exit()).as(onlyNew.out()).isZero();
        Cli top = Cli.run("check", "--since", old.toString(), "--fail-on-new", "--binding-edge", "top", HIT);
        assertThat(top.out()).contains("The job differs");
    }

    @Test
    void aFolderHoldsTheReportsOfSeveralFiles() {
        String good = Cli.fixture("members-handbook-a4.pdf");
        Cli both = Cli.run("check", "--since", temp.toString(), "--fail-on-new", "--format", "jsonl", HIT, good);
        assertThat(both.out()).contains("\"onlyNewFails\":true", "\"readable\":false");
        assertThat(Cli.run("check", "--since", old.toString(), HIT, good).err()).contains("need a folder");
    }

    @Test
    void whatIsNoReportIsRefusedBeforeAnythingIsChecked() throws Exception {
        Path other = Files.writeString(temp.resolve("x.json"), "{}");
        Cli run = Cli.run("check", "--since", other.toString(), HIT);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--since: ", "is not a report of bind-prep");
        assertThat(Cli.run("check", "--fail-on-new", HIT).err()).contains("--fail-on-new goes with --since");
        assertThat(Cli.run("check", "--since", old.toString(), "--write", "json=" + old, HIT)
                        .err())
                .contains("never overwritten");
    }
}
