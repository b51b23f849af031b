package io.bindprep.maven;

import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import io.bindprep.sheet.JobSheet;
import io.bindprep.sheet.SheetFormat;
import io.bindprep.sheet.SheetPaper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.maven.plugin.MojoExecutionException;

/** The job sheet; that of a document which must not be printed says so, and fails no build. */
final class SheetWork implements Work {
    private final OutputFolder folder;
    private final List<SheetFormat> formats;
    private final SheetPaper paper;
    private final Engine engine;

    SheetWork(OutputFolder folder, List<SheetFormat> formats, SheetPaper paper, Engine engine) {
        this.folder = folder;
        this.formats = List.copyOf(formats);
        this.paper = paper;
        this.engine = engine;
    }

    /** Endings of its files' names. */
    static String ending(SheetFormat format) {
        return ".job-sheet." + format.id();
    }

    /** The formats of these names, each once. */
    static List<SheetFormat> formats(List<String> names) throws MojoExecutionException {
        List<SheetFormat> formats = new ArrayList<>();
        for (String name : names) {
            SheetFormat format = SheetFormat.of(name.strip().toLowerCase(Locale.ROOT))
                    .orElseThrow(() -> new MojoExecutionException(Wording.unknown(
                            "<sheetFormats> (bindprep.sheetFormats)",
                            "format of a job sheet",
                            name,
                            SheetFormat.ids())));
            if (!formats.contains(format)) {
                formats.add(format);
            }
        }
        return formats;
    }

    /** The paper of this name. */
    static SheetPaper paper(String name) throws MojoExecutionException {
        return switch (name.strip().toLowerCase(Locale.ROOT)) {
            case "a4" -> SheetPaper.A4;
            case "letter" -> SheetPaper.LETTER;
            default ->
                throw new MojoExecutionException(
                        Wording.unknown("<paper> (bindprep.paper)", "paper", name, List.of("a4", "letter")));
        };
    }

    @Override
    public String settings() {
        return "spec " + formats + " " + paper;
    }

    @Override
    public Made make(PdfInput document, CheckRequest request)
            throws UnreadableInputException, SettingException, IOException {
        Report report = engine.check(request);
        JobSheet sheet = JobSheet.of(report);
        List<Path> made = new ArrayList<>();
        for (SheetFormat format : formats) {
            made.add(folder.write(document, ending(format), out -> format.write(report, paper, out)));
        }
        String shown = made.stream().map(folder::shown).collect(Collectors.joining(", "));
        return new Made(
                sheet.good() ? Made.Level.GOOD : Made.Level.CARE,
                document.name() + ": " + (sheet.good() ? "" : sheet.verdict() + "\n  ") + "job sheet: " + shown,
                report.document().sha256(),
                made);
    }

    @Override
    public void unreadable(PdfInput document, UnreadableInputException why) throws IOException {
        for (SheetFormat format : formats) {
            folder.remove(document, ending(format));
        }
    }
}
