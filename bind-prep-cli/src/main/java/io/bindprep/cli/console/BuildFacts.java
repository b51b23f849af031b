package io.bindprep.cli.console;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Properties;

/**
 * Build facts of this command.
 *
 * @param version of the project
 * @param commit the sources' commit, as the build was told; "" where it was not
 * @param pdfbox version of the library that reads PDF
 */
public record BuildFacts(String version, String commit, String pdfbox) {
    /** As the build wrote them down. */
    public static BuildFacts read() {
        Properties facts = new Properties();
        try (InputStream in = BuildFacts.class.getResourceAsStream("build.properties")) {
            facts.load(Objects.requireNonNull(in, "build.properties"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new BuildFacts(
                facts.getProperty("version", ""), facts.getProperty("commit", ""), facts.getProperty("pdfbox", ""));
    }

    /** Lines for people; the version comes first, alone with the command's name. */
    public String[] lines() {
        List<String> lines = new ArrayList<>(List.of("bind-prep " + version));
        if (!commit.isEmpty()) {
            lines.add("commit " + commit);
        }
        lines.add("PDFBox " + pdfbox);
        lines.add("Java " + System.getProperty("java.version") + ", " + System.getProperty("java.vendor"));
        return lines.toArray(String[]::new);
    }
}
