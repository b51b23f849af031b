package io.bindprep.cli;

import static io.bindprep.cli.Cli.fixture;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that each command leaves on a disk of 16 KiB, which the system mounts in memory in a name space of its own. */
class FullDiskTest {
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();
    private static final String MOUNT = "mount -t tmpfs -o size=16k bind-prep-test \"$1\" && ";
    // the disk goes with the shell, so that it says itself what is left there
    private static final String RUN = MOUNT
            + "cd \"$1\" && shift && echo an older result > old.pdf && { \"$@\"; echo \"exit $?\"; } && ls -A && cat old.pdf";

    @TempDir
    private Path temp;

    private Path disk;

    @BeforeEach
    void thereAreSmallDisks() throws Exception {
        disk = Files.createDirectory(temp.resolve("disk"));
        assumeThat(shell(MOUNT + "true", disk.toString()))
                .as("this system lets nobody mount a small disk (unshare, tmpfs)")
                .isEmpty();
    }

    /** Answer of a shell in which anyone may mount. */
    private static String shell(String script, String... words) throws Exception {
        List<String> all = new ArrayList<>(List.of("unshare", "--map-root-user", "--mount", "sh", "-c", script, "sh"));
        all.addAll(List.of(words));
        Process process;
        try {
            process = new ProcessBuilder(all).redirectErrorStream(true).start();
        } catch (IOException e) {
            return "there is no unshare";
        }
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return said;
    }

    private String run(List<String> java, String... command) throws Exception {
        List<String> words = new ArrayList<>(List.of(disk.toString(), JAVA));
        words.addAll(java);
        words.addAll(List.of("-cp", System.getProperty("java.class.path"), "io.bindprep.cli.Main"));
        words.addAll(List.of(command));
        return shell(RUN, words.toArray(String[]::new));
    }

    @ParameterizedTest
    @ValueSource(strings = {"spec", "proof", "shift"})
    void nothingHalfWrittenStaysAndTheOlderResultDoes(String verb) throws Exception {
        assertThat(run(List.of(), verb, fixture("cookbook-letter.pdf"), "-o", "old.pdf"))
                .matches(
                        "(?s)bind-prep: --output: cannot write old\\.pdf: the disk is full or refuses it \\(.+\\); make room"
                                + " there, or name another place\nexit 2\nold\\.pdf\nan older result\n");
    }

    @Test
    void aTestSheetNeedsNoDocumentAndLeavesNothingEither() throws Exception {
        assertThat(run(List.of(), "testsheet", "--pitch", "3:1", "--trim", "a4", "-o", "old.pdf"))
                .matches("(?s)bind-prep: --output: cannot write old\\.pdf: .+\nexit 2\nold\\.pdf\nan older result\n");
    }

    @Test
    void ofSeveralReportsThoseThatFitAreWholeAndTheOthersAreNot() throws Exception {
        String said = run(
                List.of(),
                "check",
                fixture("cookbook-letter.pdf"),
                "--write",
                "sarif=old.pdf",
                "--write",
                "junit=small.xml",
                "--write",
                "json=large.json");
        assertThat(said)
                .contains("bind-prep: --write: cannot write old.pdf, large.json: the disk is full")
                .endsWith("\nexit 2\nold.pdf\nsmall.xml\nan older result\n");
    }

    @Test
    void aWatchThatCannotWriteForgetsNothing() throws Exception {
        Path in = Files.createDirectory(temp.resolve("in"));
        Files.copy(Path.of(fixture("cookbook-letter.pdf")), in.resolve("book.pdf"));
        assertThat(run(
                        List.of(),
                        "check",
                        "--watch",
                        in.toString(),
                        "--out",
                        ".",
                        "--reports",
                        "html",
                        "--once",
                        "--interval",
                        "1"))
                .contains("bind-prep: --out: cannot write ./book.pdf.html: the disk is full")
                .contains("\nexit 2\n.bind-prep-ledger\nold.pdf\nan older result\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "2"})
    void aBatchEndsWithOneMessageAndSaysWhatWasNotChecked(String threads) throws Exception {
        Path in = Files.createDirectory(temp.resolve("in"));
        for (int i = 10; i < 50; i++) {
            Files.copy(Path.of(fixture("cookbook-letter.pdf")), in.resolve("book-" + i + ".pdf"));
        }
        String said = run(
                List.of(),
                "check",
                in.toString(),
                "--threads",
                threads,
                "--format",
                "jsonl",
                "--write",
                "json=./",
                "--write",
                "html=./");
        assertThat(said.lines().filter(line -> line.contains("the disk is full")))
                .as(said)
                .hasSize(1);
        assertThat(said)
                .contains("cannot write ./book-10.json, ./book-10.html: the disk is full", "1 file: 1 with findings")
                .contains("Not checked: 39 of 40 files, as the run ended early; nothing is known of them")
                .contains("exit 2\nold.pdf\n");
    }

    @Test
    void aWatchEndsToo() throws Exception {
        Path in = Files.createDirectory(temp.resolve("in"));
        Files.copy(Path.of(fixture("cookbook-letter.pdf")), in.resolve("a.pdf"));
        Files.copy(Path.of(fixture("cookbook-letter.pdf")), in.resolve("b.pdf"));
        String said = run(
                List.of(),
                "check",
                "--watch",
                in.toString(),
                "--out",
                ".",
                "--reports",
                "html",
                "--threads",
                "1",
                "--interval",
                "1");
        assertThat(said)
                .contains("cannot write ./a.pdf.html: the disk is full")
                .contains("bind-prep: the watch ends here, as the disk of . is full: make room there")
                .contains("Not checked: 1 of 2 files")
                .doesNotContain("b.pdf.html")
                .contains("exit 2\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"proof", "shift"})
    void workingCopiesThatFindNoRoomSaySo(String verb) throws Exception {
        Path result = temp.resolve("result.pdf");
        String said =
                run(List.of("-Djava.io.tmpdir=" + disk), verb, fixture("cookbook-letter.pdf"), "-o", result.toString());
        assertThat(said)
                .startsWith("bind-prep: --output: cannot write " + result + ": there is no room for a working copy in "
                        + disk + " (")
                .contains("); make room there\nexit 2\nold.pdf\n");
        assertThat(result).doesNotExist();
    }
}
