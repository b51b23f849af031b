package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.BindPrep;
import io.bindprep.cli.console.ExitCode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Commands that README.md and the guides show run; what they link to is there. */
class ReadmeCommandsTest {
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```sh\\R(.*?)^```");
    private static final Pattern OURS = Pattern.compile("(?:bind-prep-cli/)?bind-prep (.+)");
    // a quoted word, a plain one, or what ends the command for a shell
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(#.*|[|<>&;].*)|(\\S+)");

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]*)(?:#([^)]*))?\\)");
    private static final Pattern FROM_FILE = Pattern.compile(" < (\\S+)");
    private static final String FOLDER = Cli.ROOT.resolve("fixtures/").toString();

    @TempDir
    private Path folder;

    private static Stream<String> lines(Path text) {
        return BLOCK.matcher(Documents.read(text))
                .results()
                .flatMap(block -> block.group(1).replaceAll("\\\\\\R\\s*", "").lines())
                .map(String::strip)
                .filter(line -> !line.isEmpty());
    }

    static Stream<String> commands() {
        return Documents.all().stream()
                .flatMap(ReadmeCommandsTest::lines)
                .filter(line -> OURS.matcher(line).matches());
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandRuns(String command, @TempDir Path folder) throws IOException {
        Matcher ours = OURS.matcher(command);
        assertThat(ours.matches()).isTrue();
        List<String> args = new ArrayList<>();
        for (String word : words(ours.group(1))) {
            if (!args.isEmpty() && args.get(args.size() - 1).matches("-o|--out|--accept-into")) {
                args.add(folder.resolve(word).toString());
                continue;
            }
            if (!args.isEmpty() && args.get(args.size() - 1).equals("--since")) {
                // the document's command before made it
                args.add(folder.resolve(word).toString());
                Cli.run("check", "--write", "json=" + folder.resolve(word), Cli.fixture("cookbook-letter.pdf"));
                continue;
            }
            boolean written = !args.isEmpty() && args.get(args.size() - 1).equals("--write");
            // README's paths count from the checkout; what it writes goes elsewhere here
            args.add(
                    written
                            ? word.replaceFirst("(?<==)|^(?!.*=)", Matcher.quoteReplacement(folder + "/"))
                            : Files.exists(Cli.ROOT.resolve(word))
                                    ? Cli.ROOT.resolve(word).toString()
                                    : word);
        }
        Matcher piped = FROM_FILE.matcher(command);
        InputStream in =
                piped.find() ? Files.newInputStream(Cli.ROOT.resolve(piped.group(1))) : InputStream.nullInputStream();
        Cli run = Cli.run(in, BindPrep::check, args.toArray(String[]::new));
        // some of the folder's files are bad by intention
        assertThat(run.exit())
                .as(command + "\n" + run.err())
                .isIn(ExitCode.GOOD, ExitCode.FINDINGS, args.contains(FOLDER) ? ExitCode.UNREADABLE : ExitCode.GOOD);
        assertThat(run.out()).isNotEmpty();
    }

    @Test
    void theTestCommandIsTheOneThatCiRuns() throws IOException {
        List<String> maven =
                lines(Documents.README).filter(line -> line.startsWith("mvn ")).toList();
        assertThat(maven).isNotEmpty();
        List<String> ci = Files.readAllLines(Cli.ROOT.resolve(".ci/run"));
        assertThat(ci).contains(maven.get(0).replaceAll("\\s+#.*", ""));
    }

    static List<Path> documents() {
        return Documents.all();
    }

    /** A link that leads nowhere, or to a heading that is not there, is worse than none. */
    @ParameterizedTest
    @MethodSource("documents")
    void everyLinkLeadsSomewhere(Path file) {
        Matcher link = LINK.matcher(Documents.read(file));
        while (link.find()) {
            Path target = link.group(1).isEmpty()
                    ? file
                    : file.resolveSibling(link.group(1)).normalize();
            assertThat(target).as(link.group()).exists();
            if (link.group(2) != null) {
                assertThat(Documents.read(target)
                                .lines()
                                .filter(line -> line.startsWith("#"))
                                .map(ReadmeCommandsTest::anchor))
                        .as(link.group())
                        .contains(link.group(2));
            }
        }
    }

    /** The name that code hosts give a heading. */
    private static String anchor(String heading) {
        return heading.replaceFirst("^#+ ", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\d -]", "")
                .replace(' ', '-');
    }

    /** The issue's bound: one who looks for the way in does not read a book first. */
    @Test
    void theReadmeIsShort() {
        assertThat(Documents.read(Documents.README).lines().count()).isLessThanOrEqualTo(200);
    }

    private static List<String> words(String command) {
        List<String> words = new ArrayList<>();
        Matcher m = WORD.matcher(command);
        while (m.find() && m.group(3) == null) {
            words.add(Stream.of(m.group(1), m.group(2), m.group(4))
                    .filter(group -> group != null)
                    .findFirst()
                    .orElseThrow());
        }
        return words;
    }
}
