package io.bindprep.maven;

import io.bindprep.CheckRequest;
import io.bindprep.ReportFormat;
import io.bindprep.check.Report;
import io.bindprep.files.WholeFile;
import io.bindprep.problem.UnreadableInputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.maven.plugin.MojoExecutionException;

/** Reports on disk: each is there whole or not at all. */
final class ReportFiles {
    private final Path directory;
    private final List<ReportFormat> formats;

    ReportFiles(Path directory, List<ReportFormat> formats) {
        this.directory = directory;
        this.formats = List.copyOf(formats);
    }

    /** The formats of these names, each once. */
    static List<ReportFormat> formats(List<String> names) throws MojoExecutionException {
        List<ReportFormat> formats = new ArrayList<>();
        for (String name : names) {
            ReportFormat format = ReportFormat.of(name.strip().toLowerCase(Locale.ROOT))
                    .orElseThrow(() -> new MojoExecutionException("<formats> (bindprep.formats): no format is called \""
                            + name + "\"\n  Known: " + String.join(", ", ReportFormat.ids()) + "."));
            if (!formats.contains(format)) {
                formats.add(format);
            }
        }
        return formats;
    }

    /** Writes every form; returns the one to name in the log, that for people where it is among them. */
    Path write(PdfInput document, CheckRequest request, Report report) throws IOException, UnreadableInputException {
        Path shown = directory;
        for (ReportFormat format : formats) {
            Path file = put(document, format, format.write(request, report));
            shown = shown.equals(directory) || format == ReportFormat.TEXT ? file : shown;
        }
        return shown;
    }

    /** Writes what there is to say of a document that could not be read. */
    void unreadable(PdfInput document, UnreadableInputException why) throws IOException {
        for (ReportFormat format : formats) {
            put(document, format, format.unreadable(document.name(), why));
        }
    }

    private Path put(PdfInput document, ReportFormat format, String content) throws IOException {
        Files.createDirectories(directory);
        Path file = directory.resolve(document.report() + format.ending());
        WholeFile.write(file, content, document.file());
        return file;
    }
}
