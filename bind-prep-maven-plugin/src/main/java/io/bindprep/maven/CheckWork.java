package io.bindprep.maven;

import io.bindprep.ReportFormat;
import io.bindprep.check.Outcome;
import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;

/** The check: a report in each format; findings fail the build. */
final class CheckWork implements Work {
    private final OutputFolder folder;
    private final List<ReportFormat> formats;
    private final Engine engine;
    private final @Nullable EarlierReports earlier;

    CheckWork(OutputFolder folder, List<ReportFormat> formats, Engine engine) {
        this(folder, formats, engine, null);
    }

    /**
     * A check.
     *
     * @param earlier reports to compare with; null for none
     */
    CheckWork(OutputFolder folder, List<ReportFormat> formats, Engine engine, @Nullable EarlierReports earlier) {
        this.earlier = earlier;
        this.folder = folder;
        this.formats = List.copyOf(formats);
        this.engine = engine;
    }

    /** The formats of these names, each once. */
    static List<ReportFormat> formats(List<String> names) throws MojoExecutionException {
        List<ReportFormat> formats = new ArrayList<>();
        for (String name : names) {
            ReportFormat format = ReportFormat.of(name.strip().toLowerCase(Locale.ROOT))
                    .orElseThrow(() -> new MojoExecutionException(
                            Wording.unknown("<formats> (bindprep.formats)", "format", name, ReportFormat.ids())));
            if (!formats.contains(format)) {
                formats.add(format);
            }
        }
        return formats;
    }

    @Override
    public String settings() {
        return "check " + formats + (earlier == null ? "" : " " + earlier.failOnNew() + " " + earlier.digest());
    }

    @Override
    public Made make(PdfInput document, CheckRequest request)
            throws UnreadableInputException, SettingException, IOException {
        Report checked = engine.check(request);
        Report report = earlier == null ? checked : earlier.compare(document, checked);
        List<Path> files = new ArrayList<>();
        Path named = folder.directory();
        for (ReportFormat format : formats) {
            Path file = put(document, format, format.write(request, report));
            // the log names the report for people where there is one
            named = files.isEmpty() || format == ReportFormat.TEXT ? file : named;
            files.add(file);
        }
        return new Made(
                report.failed()
                        ? Made.Level.BAD
                        : report.outcome() == Outcome.FINDINGS ? Made.Level.CARE : Made.Level.GOOD,
                Wording.checked(document, report, folder.shown(named)),
                report.document().sha256(),
                files);
    }

    @Override
    public void unreadable(PdfInput document, UnreadableInputException why) throws IOException {
        for (ReportFormat format : formats) {
            put(document, format, format.unreadable(document.name(), why));
        }
    }

    private Path put(PdfInput document, ReportFormat format, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return folder.write(document, format.ending(), out -> out.write(bytes));
    }
}
