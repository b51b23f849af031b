package example;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The example of bind-prep-core/README.md: it compiles against what is public, runs, and prints what is shown. */
class PrintOrNotTest {
    private static final Path ROOT = Path.of(System.getProperty("bindprep.root"));
    private static final Path SOURCE = ROOT.resolve("bind-prep-core/src/test/java/example/PrintOrNot.java");
    private static final Pattern SHOWN = Pattern.compile("(?s)```java\\R(.*?)```.*?```text\\R(.*?)```");

    @Test
    void readmeShowsTheExampleAndWhatItPrints() throws Exception {
        Matcher shown = SHOWN.matcher(
                Files.readString(ROOT.resolve("bind-prep-core/README.md")).replace("\r\n", "\n"));
        assertThat(shown.find()).isTrue();
        assertThat(Files.readString(SOURCE).replace("\r\n", "\n")).isEqualTo("package example;\n\n" + shown.group(1));
        assertThat(printed("cookbook-letter.pdf", "members-handbook-a4.pdf", "word-file.pdf"))
                .isEqualTo(shown.group(2));
    }

    /** Marks planted on pages 14 and 27 were measured with other tools: see fixtures/README.md. */
    @Test
    void itFindsWhatWasPlanted() throws Exception {
        assertThat(printed("cookbook-letter.pdf"))
                .startsWith("cookbook-letter.pdf: do not print\n")
                .contains("  text-hit [14]\n", "  line-hit [27]\n");
    }

    private static String printed(String... fixtures) throws Exception {
        String[] files = new String[fixtures.length];
        for (int i = 0; i < files.length; i++) {
            files[i] = ROOT.resolve("fixtures").resolve(fixtures[i]).toString();
        }
        PrintStream before = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
            System.setOut(out);
            PrintOrNot.main(files);
        } finally {
            System.setOut(before);
        }
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
