package io.bindprep.cli;

import static io.bindprep.cli.Cli.fixture;
import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.cli.batch.Engine;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CheckCommandTest {
    private static final String CLEAR = fixture("members-handbook-a4.pdf");
    private static final String HIT = fixture("cookbook-letter.pdf");
    private static final String DAMAGED = fixture("damaged.pdf");

    @Test
    void goodIsZero() {
        Cli run = Cli.run("check", CLEAR);
        assertThat(run.exit()).as(run.out() + run.err()).isZero();
        assertThat(run.out()).contains("members-handbook-a4.pdf").doesNotContain("\u001b");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void findingsAreOneUnlessTheyNeverFail() {
        assertThat(Cli.run("check", HIT).exit()).isEqualTo(1);
        assertThat(Cli.run("check", "--fail-on", "never", HIT).exit()).isZero();
    }

    @Test
    void aWarningFailsOnlyWhereAsked() {
        // mixed sizes and nothing in the holes: fixtures/README.md
        int byError = Cli.run("check", fixture("mixed-sizes.pdf")).exit();
        int byWarning = Cli.run("check", "--fail-on", "warning", fixture("mixed-sizes.pdf"))
                .exit();
        assertThat(byWarning).isEqualTo(1);
        assertThat(byError).isLessThanOrEqualTo(byWarning);
    }

    @ParameterizedTest
    @ValueSource(strings = {"damaged.pdf", "word-file.pdf", "picture.pdf", "empty.pdf", "locked.pdf", "no-such.pdf"})
    void anUnreadableFileIsThreeAndSaysWhatToDoOnStderr(String name) {
        Cli run = Cli.run("check", fixture(name));
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(name).doesNotContain("Exception", "\tat ");

        Cli json = Cli.run("check", "--format", "json", fixture(name));
        assertThat(json.exit()).isEqualTo(3);
        assertThat(json.err()).isEmpty();
        assertThat(tree(json).path("outcome").asString()).isEqualTo("unreadable");
    }

    @Test
    void ofSeveralFilesEachIsCheckedAndTheWorstCounts() {
        Cli run = Cli.run("check", DAMAGED, HIT, CLEAR);
        assertThat(run.exit()).isEqualTo(3);
        assertThat(run.out()).containsSubsequence("== " + HIT + " ==", "== " + CLEAR + " ==");
        assertThat(run.err()).contains("damaged.pdf");
        assertThat(Cli.run("check", CLEAR, HIT, CLEAR).exit()).isEqualTo(1);
    }

    @Test
    void severalFilesAreOneJsonArrayInTheirOrder() {
        Cli run = Cli.run("check", "--format", "json", DAMAGED, HIT, CLEAR);
        assertThat(run.exit()).isEqualTo(3);
        JsonNode tree = tree(run);
        assertThat(tree.isArray()).isTrue();
        assertThat(tree.findValuesAsString("outcome")).containsExactly("unreadable", "findings", "good");
    }

    @Test
    void jsonListsEveryPageOnlyWhereAsked() {
        JsonNode some = tree(Cli.run("check", "--format", "json", HIT)).path("pages");
        JsonNode all =
                tree(Cli.run("check", "--format", "json", "--all-pages", HIT)).path("pages");
        assertThat(all.size()).isEqualTo(100);
        assertThat(some.findValuesAsString("page")).contains("14", "27").doesNotContain("1");
        assertThat(some.findValuesAsString("verdict")).doesNotContain("clear");
    }

    @Test
    void thePasswordIsTheFirstLineOfItsFile(@TempDir Path folder) throws Exception {
        String locked = fixture("locked.pdf");
        Cli opened = Cli.run("check", "--password-file", fixture("password.txt"), locked);
        assertThat(opened.exit()).as(opened.err()).isZero();
        Path wrong = Files.writeString(folder.resolve("wrong.txt"), "sesame\n");
        Cli refused = Cli.run("check", "--password-file", wrong.toString(), locked);
        assertThat(refused.exit()).isEqualTo(3);
        assertThat(refused.err()).doesNotContain("sesame");
    }

    @Test
    void aPasswordFileWithoutPasswordIsAnError(@TempDir Path folder) throws Exception {
        Path empty = Files.writeString(folder.resolve("empty.txt"), "\nsecond line");
        assertUsage(Cli.run("check", "--password-file", empty.toString(), CLEAR), "--password-file: no password");
        String missing = folder.resolve("missing.txt").toString();
        assertUsage(Cli.run("check", "--password-file", missing, CLEAR), "there is no such file");
        assertUsage(Cli.run("check", "--job", folder.toString(), CLEAR), "--job: cannot read", "a directory");
    }

    @Test
    void wrongUsageIsTwoWithAHint() {
        Cli alone = Cli.run();
        assertThat(alone.exit()).isEqualTo(2);
        assertThat(alone.err())
                .contains("bind-prep check book.pdf", "bind-prep spec book.pdf", "bind-prep shift book.pdf")
                .contains("bind-prep --help", "bind-prep help check");
        assertThat(alone.out())
                .as("a script that forgot its verb gets no output")
                .isEmpty();
        assertUsage(Cli.run("check"), "FILE", "bind-prep check --help");
        assertUsage(Cli.run("check", "--binding-egde", "left", CLEAR), "--binding-egde", "--binding-edge");
        assertUsage(Cli.run("check", "--format", "xml", CLEAR), "--format", "text, json", "xml");
        assertUsage(Cli.run("check", "--sides", "one", "--sides", "two", CLEAR), "--sides", "only once");
        assertUsage(Cli.run("chek", CLEAR), "chek", "bind-prep check");
    }

    private static void assertUsage(Cli run, String... words) {
        assertThat(run.exit()).as(run.err()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("bind-prep: ").contains(words);
    }

    @Test
    void aBugIsFourWithoutAStackTraceAndKeepsNoOtherFileFromItsAnswer() {
        Engine broken = request -> {
            if (request.name().contains("cookbook")) {
                throw new IllegalStateException("wrapped", new IllegalArgumentException("seventh hole"));
            }
            return io.bindprep.BindPrep.check(request);
        };
        Cli run = Cli.run(broken, "check", "--format", "json", HIT, CLEAR);
        assertThat(run.exit()).isEqualTo(4);
        assertThat(run.err())
                .contains(
                        "cookbook-letter.pdf",
                        "seventh hole",
                        "io.bindprep.cli.CheckCommandTest:",
                        "This is a bug in bind-prep, please report it")
                .doesNotContain("\tat ");
        assertThat(tree(run).findValuesAsString("outcome")).containsExactly("good");
        assertThat(Cli.run(
                                r -> {
                                    throw new StackOverflowError();
                                },
                                "check",
                                CLEAR)
                        .exit())
                .isEqualTo(4);
    }

    @Test
    void helpTellsExitCodesAndAnExampleThatRuns() {
        Cli help = Cli.run("check", "--help");
        assertThat(help.exit()).isZero();
        assertThat(help.out()).contains("0   good", "1   findings", "2   ", "3   ", "4   ");
        String example = help.out()
                .lines()
                .filter(line -> line.startsWith("  bind-prep check "))
                .findFirst()
                .orElseThrow();
        String[] args = example.strip().replace("book.pdf", CLEAR).split(" ");
        assertThat(Cli.run(Arrays.copyOfRange(args, 1, args.length)).exit()).isZero();
    }

    @Test
    void versionTellsWhatWasBuiltAndOnWhatItRuns() throws Exception {
        Cli run = Cli.run("--version");
        assertThat(run.exit()).isZero();
        List<String> lines = run.out().lines().toList();
        String pom = Files.readString(Cli.ROOT.resolve("pom.xml"));
        assertThat(pom).contains("<version>" + lines.get(0).replace("bind-prep ", "") + "</version>");
        String pdfbox = PDDocument.class.getPackage().getImplementationVersion();
        assertThat(lines).contains("PDFBox " + pdfbox);
        assertThat(lines.get(lines.size() - 1)).startsWith("Java " + System.getProperty("java.version"));
    }

    @Test
    void aFileMayBeCalledLikeNothingElse(@TempDir Path folder) throws Exception {
        Path odd = folder.resolve("@größe, 100% (1).pdf");
        Files.copy(Path.of(CLEAR), odd);
        assertThat(Cli.run("check", odd.toString()).exit()).isZero();
    }

    @Test
    void theSameBytesEachTimeInEveryLocale() {
        Locale before = Locale.getDefault();
        String[] json = {"check", "--format", "json", "--all-pages", HIT, DAMAGED};
        String[] text = {"check", HIT, DAMAGED};
        Cli firstJson = Cli.run(json);
        Cli firstText = Cli.run(text);
        try {
            for (String tag : List.of("en", "de", "tr", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(Cli.run(json)).as(tag).isEqualTo(firstJson);
                assertThat(Cli.run(text)).as(tag).isEqualTo(firstText);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    private static JsonNode tree(Cli run) {
        return JsonMapper.shared().readTree(run.out());
    }
}
