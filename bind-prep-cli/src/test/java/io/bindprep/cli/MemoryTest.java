package io.bindprep.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.bindprep.cli.batch.Engine;
import io.bindprep.cli.console.ExitCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A sentence where Java's memory runs out, wherever it was. */
class MemoryTest {
    private static final Path BOOK = Cli.ROOT.resolve("fixtures/members-handbook-a4.pdf");

    @TempDir
    private Path temp;

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8, 10})
    void noStackTraceInATinyHeap(int megabytes) throws Exception {
        Path err = temp.resolve("err");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx" + megabytes + "m",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "io.bindprep.cli.Main",
                        "check",
                        BOOK.toString())
                .redirectOutput(temp.resolve("out").toFile())
                .redirectError(err.toFile())
                .start();
        int exit = process.waitFor();
        String said = Files.readString(err);
        assertThat(said).doesNotContain("Exception", "internal error", "bug");
        if (exit == ExitCode.GOOD) {
            // enough for this book on this runtime: then all of the answer is there
            assertThat(Files.readString(temp.resolve("out")))
                    .isEqualTo(Cli.run("check", BOOK.toString()).out());
            return;
        }
        assertThat(exit).as(said).isIn(ExitCode.UNREADABLE, ExitCode.INTERNAL);
        assertThat(said).contains("memory");
    }

    /** An earlier report of 15 MiB that is none: trees, names and texts that take many times their size. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"job\":{\"a\":[ | {}, | {}]}",
                "\"input\":{\"a\":[ | [], | []]}",
                "\"findings\":[{\"places\":[ | {}, | {}]}]",
                "\"findings\":[ | {}, | {}]",
                "\"other\":{ | \"%08d\":1, | \"a\":1}"
            })
    void aHugeEarlierReportIsRefusedInASmallHeap(String before, String repeated, String after) throws Exception {
        StringBuilder text = new StringBuilder("{\"schemaVersion\":2," + before);
        for (int i = 0; text.length() < 15 * 1024 * 1024; i++) {
            text.append(repeated.contains("%") ? repeated.formatted(i) : repeated);
        }
        Path report = Files.writeString(temp.resolve("old.json"), text + after + "}");
        Path err = temp.resolve("err");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx128m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "io.bindprep.cli.Main",
                        "check",
                        "--since",
                        report.toString(),
                        BOOK.toString())
                .redirectOutput(temp.resolve("out").toFile())
                .redirectError(err.toFile())
                .start();
        assertThat(process.waitFor()).as(Files.readString(err)).isEqualTo(ExitCode.USAGE);
        assertThat(Files.readString(err)).contains("old.json").doesNotContain("memory");
    }

    @Test
    void isNoBugOfOurs() throws IOException {
        Engine full = request -> {
            throw new IllegalStateException("the check failed", new OutOfMemoryError("Java heap space"));
        };
        Cli run = Cli.run(full, "check", BOOK.toString());
        assertThat(run.exit()).isEqualTo(ExitCode.INTERNAL);
        assertThat(run.err())
                .contains("members-handbook-a4.pdf: the memory that Java may use ran out.", "BINDPREP_JAVA_OPTS=-Xmx1g")
                .doesNotContain("bug");
    }
}
