package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.check.FindingKind;
import io.bindprep.check.FindingKinds;
import io.bindprep.job.JobReader;
import io.bindprep.marks.Verdict;
import io.bindprep.setting.KeyDescription;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The glossary and the words in use are one: nothing of the trade goes unexplained, nothing is explained in vain. */
class GlossaryTest {
    private static final Path ROOT = Path.of(System.getProperty("bindprep.root"));
    private static final Path GLOSSARY = ROOT.resolve("bind-prep-core/GLOSSARY.md");
    private static final Pattern ROW =
            Pattern.compile("(?m)^\\| ((?!term )[a-z][^|]*?) \\| ([^|]+?) \\| ([^|]+?) \\|$");

    /** Keys and ids in words that everybody has. */
    private static final Set<String> PLAIN_KEYS = Set.of("sides", "other-sizes", "fail-on", "tables", "units");

    private static final Set<String> PLAIN_IDS = Set.of(
            "content-fault",
            "appearance-missing",
            "file-repaired",
            "font-not-embedded",
            "header-junk",
            "image-resolution",
            "page-size",
            "page-size-mixed",
            "pages-lost",
            "pages-turn-stiffly",
            "paper-outside-long",
            "paper-outside-short",
            "print-forbidden",
            "reading-direction",
            "unusual-turn",
            "edge-unpunchable",
            "feed-same-end");

    /** Terms of the first schema, and what was said before a common word was found. */
    private static final List<String> OLD = List.of(
            "bound edge",
            "bound-edge",
            "boundEdge",
            "clear margin",
            "clear-margin",
            "clearMargin",
            "punched zone",
            "punchedZone",
            "pulls of the arm",
            "stuck pin",
            "wire strand",
            "hole axis",
            "hole axes",
            "leaves-bind",
            "text-punched",
            "turned a quarter",
            "\"registration\"",
            "with registration",
            "their registration");

    private static TreeMap<String, String> glossary() throws IOException {
        return ROW.matcher(Files.readString(GLOSSARY).replace("\r\n", "\n"))
                .results()
                .collect(Collectors.toMap(
                        m -> m.group(1),
                        m -> m.group(2),
                        (a, b) -> {
                            throw new AssertionError("said twice: " + a);
                        },
                        TreeMap::new));
    }

    private static boolean explained(String words, Set<String> terms) {
        String text = " " + words.replace('-', ' ') + " ";
        return terms.stream()
                .anyMatch(t -> text.contains(" " + t.replace('-', ' ') + " ")
                        || text.contains(" " + t.replace('-', ' ') + "s "));
    }

    @Test
    void everyKeyOfTheJobIsExplained() throws IOException {
        Set<String> terms = glossary().keySet();
        assertThat(terms).hasSizeGreaterThan(50);
        for (KeyDescription key : JobReader.descriptions()) {
            if (!PLAIN_KEYS.contains(key.key())) {
                assertThat(explained(key.key(), terms)
                                || key.key().equals("copies")
                                || key.key().equals("accept"))
                        .as(key.key())
                        .isTrue();
            }
        }
    }

    @Test
    void everyFindingAndVerdictIsExplained() throws IOException {
        Set<String> terms = glossary().keySet();
        for (FindingKind kind : FindingKinds.all()) {
            if (!PLAIN_IDS.contains(kind.id())) {
                assertThat(explained(kind.id(), terms)).as(kind.id()).isTrue();
            }
        }
        for (Verdict verdict : Verdict.values()) {
            assertThat(terms).contains(verdict.name().toLowerCase(Locale.ROOT));
        }
    }

    /** Words of the screen, the sheets, the findings, the guides. */
    private static String inUse() throws IOException {
        StringBuilder all = new StringBuilder();
        for (Path file : texts(true)) {
            if (!file.equals(GLOSSARY)) {
                all.append(' ').append(Files.readString(file));
            }
        }
        return all.toString().toLowerCase(Locale.ROOT).replaceAll("[\\s\"+]+", " ");
    }

    private static List<Path> texts(boolean code) throws IOException {
        Stream<Path> documents = Stream.of(
                        "README.md",
                        "bind-prep-cli/GUIDE.md",
                        "bind-prep-core/README.md",
                        "bind-prep-core/GLOSSARY.md",
                        "bind-prep-core/FINDINGS.md",
                        "bind-prep-maven-plugin/README.md")
                .map(ROOT::resolve);
        List<Path> sources = new ArrayList<>(documents.toList());
        for (String module : List.of("bind-prep-core", "bind-prep-cli", "bind-prep-maven-plugin")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main"))) {
                files.filter(f -> f.toString().matches(code ? ".*\\.(java|jte|json)" : ".*\\.(java|jte|json|csv)"))
                        .forEach(sources::add);
            }
        }
        return sources;
    }

    @Test
    void everyTermIsInUse() throws IOException {
        String words = inUse();
        assertThat(glossary().keySet())
                .allMatch(term -> Pattern.compile("\\b" + term.replace("-", "[- ]") + "s?\\b")
                        .matcher(words)
                        .find());
    }

    @Test
    void oldTermsAreGone() throws IOException {
        for (Path file : texts(false)) {
            // the one place that tells an old key its new name
            if (!file.endsWith("RenamedKeys.java")) {
                assertThat(Files.readString(file))
                        .as(file.toString())
                        .doesNotContainIgnoringCase(OLD.toArray(String[]::new));
            }
        }
    }

    @Test
    void everyTermHasASentenceAndItsSource() throws IOException {
        glossary().forEach((term, meaning) -> assertThat(meaning).as(term).hasSizeGreaterThan(10));
        long rows = Files.readString(GLOSSARY)
                .lines()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| term "))
                .count();
        assertThat(rows).as("every row is read").isEqualTo(glossary().size());
    }
}
