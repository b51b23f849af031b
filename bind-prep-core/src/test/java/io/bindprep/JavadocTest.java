package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DocumentationTool;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The JDK's own tool makes the documentation of what is public, and complains of nothing. */
class JavadocTest {
    private static final Path SOURCES = Path.of(System.getProperty("bindprep.root"), "bind-prep-core/src/main/java");

    /** Members that need no words: constants of an enum, a record's constructor that only copies, serialized fields. */
    private static final String SAYS_ITSELF = "[A-Z][A-Z_0-9]*\\b.*|public [A-Z]\\w* \\{|private final .*";

    private static final String TYPE = ".*\\b(class|record|interface|enum) [A-Z].*";

    private static final Path API = Path.of(System.getProperty("bindprep.root"), "bind-prep-core/API.txt");

    @TempDir
    private Path pages;

    @Test
    void documentationIsMadeWithoutAWarning() throws Exception {
        List<Diagnostic<? extends JavaFileObject>> said = new ArrayList<>();
        DocumentationTool javadoc = ToolProvider.getSystemDocumentationTool();
        try (StandardJavaFileManager files = javadoc.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8);
                Stream<Path> sources = Files.walk(SOURCES)) {
            List<Path> java =
                    sources.filter(f -> f.toString().endsWith(".java")).sorted().toList();
            List<String> options = List.of(
                    "-quiet",
                    "-public",
                    "-Xdoclint:all",
                    "-Xmaxwarns",
                    "5000",
                    "-d",
                    pages.toString(),
                    "-classpath",
                    System.getProperty("java.class.path"));
            javadoc.getTask(
                            new StringWriter(),
                            files,
                            said::add,
                            null,
                            options,
                            files.getJavaFileObjectsFromPaths(java))
                    .call();
        }
        assertThat(pages.resolve("io/bindprep/BindPrep.html")).exists();
        Set<String> wrong = new TreeSet<>();
        for (Diagnostic<? extends JavaFileObject> d : said) {
            if (d.getKind() != Diagnostic.Kind.NOTE && !isLeftToTheSentence(d)) {
                wrong.add(d.toString());
            }
        }
        assertThat(wrong).isEmpty();
    }

    /** The sentence of a method says what comes out, and tags stand only where they add to it. */
    private static boolean isLeftToTheSentence(Diagnostic<? extends JavaFileObject> d) throws Exception {
        String message = d.getMessage(Locale.ROOT);
        // newer JDKs ask for a constructor to be written out where it only could say that it makes an object
        if (message.matches("(?s).*no @(param|return|throws).*") || message.startsWith("use of default constructor")) {
            return true;
        }
        JavaFileObject source = d.getSource();
        if (!message.contains("no comment") || source == null) {
            return false;
        }
        String line = source.getCharContent(true)
                .toString()
                .lines()
                .skip(d.getLineNumber() - 1)
                .findFirst()
                .orElseThrow();
        boolean component = line.contains(" record ") && d.getColumnNumber() > line.indexOf('(') + 1;
        return component || line.strip().matches(SAYS_ITSELF) || !line.matches(TYPE) && !isForCallers(source);
    }

    /** Plain methods that only our own packages use may leave it to their name; no type may. */
    private static boolean isForCallers(JavaFileObject source) throws IOException {
        String name = SOURCES.relativize(Path.of(source.toUri())).toString().replaceAll("[/\\\\]", ".");
        String type = name.replaceFirst("\\.java$", "");
        return Files.readString(API).lines().anyMatch(line -> line.matches("\\S.* " + Pattern.quote(type) + "\\b.*"));
    }
}
