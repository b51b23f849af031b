package io.bindprep.check;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.Generated;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The register of findings against the rules: what a rule says is registered, and what is registered a rule says. What
 * reports of tests hold is compared in {@link Scenario}.
 */
class FindingKindsTest {
    private static final Path RULES =
            Path.of(System.getProperty("bindprep.root"), "bind-prep-core/src/main/java/io/bindprep/check");

    /** The first argument wherever a finding is made, and constants for one. */
    private static final Pattern SAID = Pattern.compile(
            "(?:Finding\\.(?:of|measured|measuredAlong|ofMark)|Say\\.document|Say\\.onPages)\\(\\s*([^;]*?),\\s|String ID = ([^;]+);");

    private static final Pattern LITERAL = Pattern.compile("\"([a-z-]+)\"");

    @Test
    void idsAreLowerCaseWordsInOrderEachOnce() {
        assertThat(FindingKinds.all())
                .extracting(FindingKind::id)
                .allMatch(id -> id.matches("[a-z]+(-[a-z]+)+"))
                .isSorted()
                .doesNotHaveDuplicates();
        for (FindingKind kind : FindingKinds.all()) {
            assertThat(kind.severities()).as(kind.id()).isNotEmpty().isSorted().doesNotHaveDuplicates();
            assertThat(kind.meaning()).as(kind.id()).endsWith(".");
            assertThat(kind.remedy()).as(kind.id()).endsWith(".");
        }
    }

    @Test
    void whatRulesSayIsRegisteredAndTheOtherWayRound() throws IOException {
        Set<String> said = new TreeSet<>();
        for (String part : literals()) {
            if (part.startsWith("-")) {
                // MatterRule puts its ids together from the kind of mark and the verdict
                Stream.of("text", "line", "art", "image", "annotation").forEach(kind -> said.add(kind + part));
            } else {
                said.add(part);
            }
        }
        assertThat(FindingKinds.all())
                .as("FindingKinds lists the ids of the rules, no more and no less")
                .extracting(FindingKind::id)
                .containsExactlyInAnyOrderElementsOf(said);
    }

    private static List<String> literals() throws IOException {
        try (Stream<Path> files = Files.list(RULES)) {
            StringBuilder code = new StringBuilder();
            for (Path file : files.filter(f -> f.toString().endsWith("Rule.java") || f.endsWith("Accepting.java"))
                    .sorted()
                    .toList()) {
                code.append(Files.readString(file));
            }
            return SAID.matcher(code)
                    .results()
                    .map(m -> m.group(1) == null ? m.group(2) : m.group(1))
                    .flatMap(argument -> LITERAL.matcher(argument).results().map(l -> l.group(1)))
                    .toList();
        }
    }

    @Test
    void findingsMdIsMadeFromThem() throws IOException {
        Generated.compare("bind-prep-core/FINDINGS.md", page());
    }

    private static String page() {
        StringBuilder page = new StringBuilder("""
                # Findings

                Every finding of `bind-prep check` by its id, in the text, JSON, HTML, SARIF and JUnit reports alike. An
                error spoils the book, a warning may, a note is good to know. A finding's own message has the pages, the
                measured value, the limit and the place; its remedy has the numbers.

                | id | severity | meaning | what to do |
                |---|---|---|---|
                """);
        for (FindingKind kind : FindingKinds.all()) {
            String severities = kind.severities().stream()
                    .map(s -> s.name().toLowerCase(Locale.ROOT))
                    .collect(Collectors.joining(" or "));
            page.append("| `")
                    .append(kind.id())
                    .append("` | ")
                    .append(severities)
                    .append(" | ")
                    .append(kind.meaning())
                    .append(" | ")
                    .append(kind.remedy())
                    .append(" |\n");
        }
        return page.append("\nThis page is made from the code (`FindingKinds`).\n")
                .toString();
    }
}
