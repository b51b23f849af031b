package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Output shown below a command in README.md and the guides is what the command prints, in a process of its own. To make it
 * anew: {@code -Dbindprep.regenerate}.
 */
class ReadmeOutputsTest {
    private static final Pattern EXAMPLE =
            Pattern.compile("(?m)^(```sh\\Rbind-prep-cli/bind-prep (.*)\\R```\\R{2}```text\\R)((?s:.*?))^```");
    private static final int EXAMPLES = 3;

    @TempDir
    private Path folder;

    @Test
    void whatIsShownIsWhatIsPrinted() throws Exception {
        Files.createSymbolicLink(
                folder.resolve("fixtures"), Cli.ROOT.resolve("fixtures").toAbsolutePath());
        int shown = 0;
        for (Path text : Documents.all()) {
            shown += compared(text);
        }
        assertThat(shown).isEqualTo(EXAMPLES);
    }

    private int compared(Path file) throws IOException {
        String text = Files.readString(file);
        List<MatchResult> examples = EXAMPLE.matcher(text).results().toList();
        if (System.getProperty("bindprep.regenerate") != null && !examples.isEmpty()) {
            Files.writeString(
                    file,
                    EXAMPLE.matcher(text)
                            .replaceAll(m -> Matcher.quoteReplacement(m.group(1) + printed(m.group(2)) + "```")));
            return examples.size();
        }
        for (MatchResult example : examples) {
            assertThat(example.group(3)).as(example.group(2)).isEqualTo(printed(example.group(2)));
        }
        return examples.size();
    }

    private String printed(String arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(List.of(arguments.split(" ")));
        try {
            Path out = Files.createTempFile(folder, "out", ".txt");
            ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
            builder.environment().remove("COLUMNS");
            Process process = builder.redirectOutput(out.toFile())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            assertThat(process.waitFor(2, TimeUnit.MINUTES)).as(arguments).isTrue();
            return Files.readString(out, StandardCharsets.UTF_8);
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(arguments, e);
        }
    }
}
