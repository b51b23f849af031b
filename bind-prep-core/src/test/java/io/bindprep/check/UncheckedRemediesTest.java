package io.bindprep.check;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.problem.SharedMemory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UncheckedRemediesTest {
    private static final Path PDF =
            Path.of(System.getProperty("bindprep.root", "..")).resolve("bind-prep-core/src/main/java/io/bindprep/pdf");

    /** Places where a page's reason is said: a problem, work above its bounds, or marks that hold one. */
    private static final Pattern REASON = Pattern.compile(
            "(?:problem\\(|problem = |Spent\\(|unread\\(page, |none\\.apply\\(|FAULTY = |BROKEN_OFF = |interpret\\([^\"]*?false, |true, )\\s*\"([^\"]+)\"");

    private static Set<String> reasons() throws IOException {
        Set<String> reasons = new TreeSet<>(Set.of(SharedMemory.PAGE_ASKS_TOO_MUCH));
        try (Stream<Path> files = Files.walk(PDF)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                Matcher m = REASON.matcher(Files.readString(file));
                while (m.find()) {
                    reasons.add(m.group(1));
                }
            }
        }
        return reasons;
    }

    @Test
    void eachReasonHasARemedyOfItsOwnKind() throws IOException {
        Set<String> reasons = reasons();
        assertThat(reasons)
                .hasSizeGreaterThan(25)
                .contains(
                        "its drawing instructions break off",
                        "a form in it breaks off",
                        "its forms are nested more than ",
                        "it is nested too deep",
                        "its content cannot be read");
        List<String> without = reasons.stream()
                .map(r -> r.endsWith("more than ") ? r + "9 of them" : r)
                .map(r -> r.equals("its operator \\") ? "its operator \"f\" cannot be drawn" : r)
                .filter(r -> UncheckedRemedies.of(r).equals(UncheckedRemedies.OTHER))
                .toList();
        assertThat(without).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a picture in it cannot be decoded | pictures packed as JPEG or ZIP",
                "a JPEG 2000 picture in it cannot be decoded | a folder with its jar (--image-readers)",
                "its font \"F1\" is missing | all fonts embedded",
                "one of its annotations cannot be read | flattened",
                "it holds more than 2000000 drawing operators | as one picture",
                "it asks for more memory than there is | more memory",
                "its drawing instructions break off | fresh export",
                "its Rotate of 45 is no quarter turn | rotated by 90 degrees"
            })
    void aRemedyFitsItsReason(String reason, String remedy) {
        assertThat(UncheckedRemedies.of(reason)).contains(remedy);
    }

    @Test
    void aReasonThatNobodyKnowsStillHasOne() {
        assertThat(UncheckedRemedies.of("the moon is full")).isEqualTo(UncheckedRemedies.OTHER);
    }
}
