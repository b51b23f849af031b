package io.bindprep.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A term is changed in one file: code and templates take it from there. */
class TermsTest {
    private static final Path ROOT = Path.of(System.getProperty("bindprep.root"));

    @ParameterizedTest
    @ValueSource(strings = {Terms.BINDING_MARGIN, Terms.HOLE_ZONE, Terms.PUNCHING_TOLERANCE})
    void standsInOneFile(String term) throws IOException {
        List<String> found = new ArrayList<>();
        for (String module : List.of("bind-prep-core", "bind-prep-cli", "bind-prep-maven-plugin")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main"))) {
                for (Path file : files.filter(f -> f.toString().matches(".*\\.(java|jte)"))
                        .toList()) {
                    if (Files.readString(file).toLowerCase(Locale.ROOT).contains(term)) {
                        found.add(file.getFileName().toString());
                    }
                }
            }
        }
        assertThat(found).containsExactly("Terms.java");
    }
}
