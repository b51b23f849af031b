package io.bindprep;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A test's work in a Java machine of its own, whose memory the test says. */
public final class OwnMachine {
    private OwnMachine() {}

    /**
     * Runs a class that has a main method, which must end well.
     *
     * @param heap the most memory, "128m"
     * @param folder for what it says
     * @return the lines of its standard output
     */
    public static List<String> run(String heap, Path folder, Class<?> main, String... args) throws Exception {
        Path told = folder.resolve("told");
        Path wrong = folder.resolve("wrong");
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + heap,
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Dbindprep.root=" + System.getProperty("bindprep.root", ".."),
                "-cp",
                System.getProperty("java.class.path"),
                main.getName());
        builder.command().addAll(List.of(args));
        int exit = builder.redirectError(wrong.toFile())
                .redirectOutput(told.toFile())
                .start()
                .waitFor();
        List<String> lines = Files.readAllLines(told);
        assertThat(exit).as(lines + "\n" + Files.readString(wrong)).isZero();
        return lines;
    }
}
