package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Comments begin with a noun or a verb: a clause for a sentence is not plain English. */
class CommentsTest {
    private static final Path ROOT = Path.of(System.getProperty("bindprep.root"));
    private static final String CLAUSE = "(?:what|how|whether|that|where|which|why|who)\\b";

    /** A doc comment, whose words may begin on its next line, or the first of the lines of another comment. */
    private static final Pattern BEGINS =
            Pattern.compile("(?i)/\\*\\*\\s*(?:\\*\\s*)?" + CLAUSE + "|(?m)(?<!//[^\\n]{0,200}\\n)^\\s*// *" + CLAUSE);

    private static List<String> clauses(String source) {
        return BEGINS.matcher(source)
                .results()
                .map(m -> m.group().replaceAll("\\s+", " "))
                .toList();
    }

    @Test
    void noneBeginsWithAClause() throws IOException {
        List<String> found = new ArrayList<>();
        for (String module : List.of("bind-prep-core", "bind-prep-cli", "bind-prep-maven-plugin")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src"))) {
                for (Path file : files.filter(f -> f.toString().endsWith(".java") && !f.endsWith("CommentsTest.java"))
                        .toList()) {
                    clauses(Files.readString(file)).forEach(c -> found.add(file.getFileName() + ":" + c));
                }
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void clausesAreFoundAndOnlyThese() {
        assertThat(clauses("/** Whether so. */\nint a;\n/**\n * What is.\n */\nint b;\n// where so\n"))
                .hasSize(3);
        assertThat(clauses("/** Place where so. */\n// a place\n// where so\nString s = \"what\";\n"))
                .isEmpty();
    }
}
