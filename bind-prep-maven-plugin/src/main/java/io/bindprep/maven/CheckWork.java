package io.bindprep.maven;

import io.bindprep.ReportFormat;
import io.bindprep.check.Outcome;
import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.build.RunSummary;
import io.bindprep.report.build.SummaryRow;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ReportContext;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;

/** The check: a report in each format; findings fail the build. */
final class CheckWork implements Work {
    private final OutputFolder folder;
    private final List<ReportFormat> formats;
    private final Engine engine;
    private final @Nullable EarlierReports earlier;
    private final @Nullable RunSummary summary;
    private final boolean timed;

    CheckWork(OutputFolder folder, List<ReportFormat> formats, Engine engine) {
        this(folder, formats, engine, null, null, true);
    }

    /**
     * A check.
     *
     * @param earlier reports to compare with; null for none
     * @param summary of all documents; null for none
     * @param timed whether reports may tell how long a check took; else each build makes the same bytes
     */
    CheckWork(
            OutputFolder folder,
            List<ReportFormat> formats,
            Engine engine,
            @Nullable EarlierReports earlier,
            @Nullable RunSummary summary,
            boolean timed) {
        this.earlier = earlier;
        this.summary = summary;
        this.timed = timed;
        this.folder = earlier == null ? folder : folder.sparing(earlier.inputs());
        this.formats = List.copyOf(formats);
        this.engine = engine;
    }

    /** A summary to fill where these names ask for one; else null. */
    static @Nullable RunSummary summary(List<String> names) {
        return names.stream().anyMatch(CheckWork::isSummary) ? new RunSummary() : null;
    }

    private static boolean isSummary(String name) {
        return word(name).equals(RunSummary.ID);
    }

    private static String word(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    private static List<String> known() {
        List<String> known = new ArrayList<>(ReportFormat.ids());
        known.add(RunSummary.ID);
        return known;
    }

    /** The formats of these names, each once, without that of the summary. */
    static List<ReportFormat> formats(List<String> names) throws MojoExecutionException {
        List<ReportFormat> formats = new ArrayList<>();
        for (String name : names) {
            if (isSummary(name)) {
                continue;
            }
            ReportFormat format = ReportFormat.of(word(name))
                    .orElseThrow(() -> new MojoExecutionException(
                            Wording.unknown("<formats> (bindprep.formats)", "format", name, known())));
            if (!formats.contains(format)) {
                formats.add(format);
            }
        }
        return formats;
    }

    @Override
    public String settings() {
        return "check " + formats + (summary == null ? "" : " summary") + (timed ? "" : " untimed")
                + (earlier == null ? "" : " " + earlier.failOnNew() + " " + earlier.digest());
    }

    @Override
    public Made make(PdfInput document, CheckRequest request)
            throws UnreadableInputException, SettingException, IOException {
        long begun = System.nanoTime();
        Report checked = engine.check(request);
        Duration took = timed ? Duration.ofNanos(System.nanoTime() - begun) : Duration.ZERO;
        Report report = earlier == null ? checked : earlier.compare(document, checked);
        List<Path> files = new ArrayList<>();
        Map<String, String> links = new LinkedHashMap<>();
        Path named = folder.directory();
        for (ReportFormat format : formats) {
            Path file = put(document, format, format.write(request, report, context(document, took)));
            links.put(format.id(), document.report() + format.ending());
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
                files,
                summary == null ? null : SummaryRow.of(report, document.portable(), links));
    }

    private ReportContext context(PdfInput document, Duration took) {
        boolean drawn = formats.contains(ReportFormat.CLIENT);
        return new ReportContext(
                document.portable(),
                document.name(),
                took,
                drawn ? document.report() + ReportFormat.CLIENT.ending() : "");
    }

    @Override
    public void unreadable(PdfInput document, UnreadableInputException why) throws IOException {
        for (ReportFormat format : formats) {
            put(document, format, format.unreadable(document.name(), why, context(document, Duration.ZERO)));
        }
    }

    @Override
    public void add(int place, SummaryRow row) {
        if (summary != null) {
            summary.add(place, row);
        }
    }

    @Override
    public void finish(int documents) throws IOException {
        if (summary != null) {
            folder.write(RunSummary.ENDING.substring(1), summary.text(documents));
        }
    }

    private Path put(PdfInput document, ReportFormat format, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return folder.write(document, format.ending(), out -> out.write(bytes));
    }
}
