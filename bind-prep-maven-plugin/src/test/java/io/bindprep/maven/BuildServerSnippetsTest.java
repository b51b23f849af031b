package io.bindprep.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.bindprep.ReportFormat;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Snippets of this module's README; fixtures/oracle/snippets.sh holds them against the servers' own schemas. */
class BuildServerSnippetsTest {
    private static String readme;

    @TempDir
    private Path folder;

    @BeforeAll
    static void read() throws IOException {
        readme = Files.readString(
                Path.of(System.getProperty("bindprep.root", ".."), "bind-prep-maven-plugin/README.md"));
        readme = readme.substring(readme.indexOf("## On build servers"), readme.indexOf("To fail only on what"));
    }

    private static List<String> found(String pattern) {
        return Pattern.compile(pattern, Pattern.MULTILINE)
                .matcher(readme)
                .results()
                .map(r -> r.group(1))
                .toList();
    }

    @Test
    void thePatternsMeetTheReportsAndTheFormatsAreThere() {
        List<String> junit = found("(?:junit|testResults): '([^']+)'");
        assertThat(junit).hasSize(2);
        for (String pattern : junit) {
            for (String at : List.of("target/bind-prep/book.junit.xml", "module/target/bind-prep/book.junit.xml")) {
                // the servers' "**/" is any number of folders, none too
                String java = pattern.replace("**/", "{,**/}");
                assertThat(folder.getFileSystem().getPathMatcher("glob:" + java).matches(Path.of(at)))
                        .as(at)
                        .isTrue();
            }
        }
        List<String> asked = List.of(found("<formats>([^<]+)</formats>").get(0).split(","));
        assertThat(asked).contains("junit", "sarif", "summary");
        assertThat(asked.stream().filter(f -> !f.equals("summary")).toList())
                .isSubsetOf(ReportFormat.ids().stream().collect(Collectors.toList()));
    }

    /** The line has to end well on a server's shell (bash -e) where there is a root's summary, a module's, both or none. */
    @Test
    void theSummaryIsShownFromWhereverItIs() throws Exception {
        List<String> lines = found("^- run: (.*)$");
        assertThat(lines).hasSize(1);
        for (List<String> there :
                List.of(List.<String>of(), List.of("."), List.of("book"), List.of(".", "book", "a module"))) {
            Path project = Files.createTempDirectory(folder, "project");
            for (String module : there) {
                Path target = Files.createDirectories(project.resolve(module).resolve("target/bind-prep"));
                Files.writeString(target.resolve("summary.md"), "| " + module + " |\n");
            }
            Path shown = project.resolve("shown.md");
            ProcessBuilder shell = new ProcessBuilder("bash", "-e", "-c", lines.get(0)).directory(project.toFile());
            shell.environment().put("GITHUB_STEP_SUMMARY", shown.toString());
            shell.redirectErrorStream(true)
                    .redirectOutput(project.resolve("said").toFile());
            assumeTrue(Files.exists(Path.of("/bin/bash")), "no bash");
            assertThat(shell.start().waitFor()).as(there + "").isZero();
            Matcher rows = Pattern.compile("\\| (.+) \\|").matcher(Files.readString(shown));
            assertThat(rows.results().map(r -> r.group(1)).toList()).containsExactlyInAnyOrderElementsOf(there);
        }
    }
}
