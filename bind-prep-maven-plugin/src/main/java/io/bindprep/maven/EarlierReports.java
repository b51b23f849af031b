package io.bindprep.maven;

import io.bindprep.check.Report;
import io.bindprep.files.Inputs;
import io.bindprep.problem.SettingException;
import io.bindprep.report.json.EarlierReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;

/**
 * A folder with the JSON reports of earlier checks, NAME.json for each document.
 *
 * @param failOnNew whether only what is new or worse since then fails the build
 * @param digest of every report in it, so that a document is looked at again once one has changed
 * @param inputs every report in it, which no new one is written over
 */
record EarlierReports(Path folder, boolean failOnNew, String digest, Inputs inputs) {
    static EarlierReports of(Path folder, boolean failOnNew, Path reportDirectory) throws MojoExecutionException {
        if (!Files.isDirectory(folder)) {
            throw new MojoExecutionException("<since> (bindprep.since): there is no folder " + folder
                    + "\n  Name a folder with the JSON reports of an earlier check, NAME.json for each document.");
        }
        if (same(folder, reportDirectory)) {
            throw new MojoExecutionException(
                    "<since> (bindprep.since): " + folder + " is where new reports are written"
                            + "\n  Keep the earlier reports in a folder of their own, else a second build would find nothing new.");
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<String> sums = new ArrayList<>();
            Inputs inputs = Inputs.NONE;
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                sums.add(file.getFileName() + " " + Digests.of(file));
                inputs = inputs.plus("an earlier report", file);
            }
            return new EarlierReports(folder, failOnNew, Digests.of(sums.toArray(String[]::new)), inputs);
        } catch (IOException e) {
            throw new MojoExecutionException("<since> (bindprep.since): " + folder + " cannot be read", e);
        }
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException e) {
            return one.normalize().equals(other.normalize());
        }
    }

    /** The report compared with that of an earlier check; without one all is new. */
    Report compare(PdfInput document, Report report) throws SettingException {
        Path file = folder.resolve(document.report() + ".json");
        EarlierReport earlier = Files.exists(file) ? EarlierReport.read(file) : EarlierReport.none(document.name());
        return earlier.compare(report, failOnNew);
    }
}
