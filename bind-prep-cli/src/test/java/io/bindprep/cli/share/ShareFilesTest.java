package io.bindprep.cli.share;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import io.bindprep.cli.Cli;
import io.bindprep.job.JobReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that stand beside the command: judged by bash and groff themselves, where they are installed. */
class ShareFilesTest {
    private static final Path BASH = Path.of("/usr/bin/bash");
    private static final Path GROFF = Path.of("/usr/bin/groff");

    @TempDir
    private Path share;

    private Path completion;

    @BeforeEach
    void write() throws IOException {
        ShareFiles.write(share);
        completion = share.resolve("bash-completion/completions/bind-prep");
    }

    @Test
    void theSameBytesEachTime(@TempDir Path again) throws IOException {
        ShareFiles.write(again);
        assertThat(contents(again)).isEqualTo(contents(share));
        assertThat(Cli.run("completion").out())
                .isEqualTo(Files.readString(completion))
                .startsWith("#\n# bind-prep");
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                contents.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        assertThat(contents).hasSizeGreaterThan(7);
        return contents;
    }

    @ParameterizedTest
    @CsvSource({
        "ch, check",
        "check --binding-e, --binding-edge",
        "check --stock bon, bond-20 bond-24 bond-28",
        "check --trim a, a2 a3 a4 a5 a6 a7 arch-a arch-b",
        "check --press-sheet sra, sra4 sra3",
        "check --pitch 3, 3:1",
        "check --pitch 2, 2:1",
        "check --pitch R4m-DIN-A, R4m-DIN-A4 R4m-DIN-A5",
        "check --depth d, deep",
        "check --depth s, shallow",
        "check --depth m, middle",
        "check --clearance c, close",
        "check --punch generic-R2m-, generic-R2m-DIN generic-R2m-ISO generic-R2m-MIB",
        "check --units i, inch",
        "check --bleed n, none",
        "plan --trim a4, a4",
        "check --sides t, two two-head-to-foot",
        "check --format j, json jsonl",
        "spec --paper l, letter",
        "list stoc, stocks",
        "list stocks bond-2, bond-20 bond-24 bond-28",
        "list --format json st, stocks",
        "list wire-, wire-thicknesses"
    })
    void bashCompletesCommandsOptionsAndWords(String typed, String words) throws Exception {
        assumeThat(BASH).exists();
        String script = "shopt -s progcomp; compopt() { :; }; . \"$1\"; shift; COMP_WORDS=(bind-prep \"$@\");"
                + " COMP_CWORD=$((${#COMP_WORDS[@]}-1)); _complete_bind-prep; echo \"${COMPREPLY[*]}\"";
        List<String> command = new ArrayList<>(List.of(BASH.toString(), "-c", script, "test", completion.toString()));
        command.addAll(List.of(typed.split(" ")));
        assertThat(output(command)).isEqualTo(words + "\n");
    }

    @Test
    void groffHasNothingToSayAgainstThePages() throws Exception {
        assumeThat(GROFF).exists();
        for (Path page : pages()) {
            List<String> all = List.of(GROFF.toString(), "-man", "-Tutf8", "-ww", "-z", page.toString());
            assertThat(output(all)).as(page.toString()).isEmpty();
        }
    }

    @Test
    void aPageTellsWhatTheHelpTells() throws Exception {
        assumeThat(GROFF).exists();
        String page = output(List.of(
                GROFF.toString(),
                "-man",
                "-Tascii",
                "-P-cbou",
                share.resolve("man/man1/bind-prep-check.1").toString()));
        for (String key : JobReader.keys()) {
            // accepted findings stand in a file alone, as they are bound to what was seen
            assertThat(page).contains(key.equals("accept") ? "--accept-into=" : "--" + key + "=");
        }
        assertThat(page.replaceAll("\\s+", " "))
                .containsSubsequence(
                        "NAME",
                        "bind-prep-check",
                        "SYNOPSIS",
                        "bind-prep check [OPTIONS] FILE...",
                        "Answers",
                        "--write=FORMAT=FILE",
                        "Watching a folder",
                        "--watch=DIR",
                        "(5 %, at least 10)",
                        "EXIT STATUS",
                        "a file could not be read",
                        "EXAMPLES",
                        "SEE ALSO",
                        "bind-prep-spec(1)");
    }

    @Test
    void everyVerbHasAPageAndAnExample() throws IOException {
        String help = Cli.run("--help").out();
        for (Path page : pages()) {
            String verb = page.getFileName().toString().replaceAll("^bind-prep-?|\\.1$", "");
            assertThat(Files.readString(page)).contains(".SH EXAMPLES");
            if (!verb.isEmpty()) {
                assertThat(help).containsPattern("(?m)^  " + verb + "  ");
                assertThat(Cli.run(verb, "--help").out()).containsPattern("\nExamples?\\b");
            }
        }
        assertThat(help).containsSubsequence("For a document:", "check", "For jobs:", "list", "Other:", "completion");
    }

    private List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(share.resolve("man/man1"))) {
            return files.sorted().toList();
        }
    }

    private static String output(List<String> command) throws Exception {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        return said;
    }
}
