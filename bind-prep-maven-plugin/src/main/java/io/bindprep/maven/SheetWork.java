package io.bindprep.maven;

import io.bindprep.CheckRequest;
import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.sheet.JobSheet;
import io.bindprep.sheet.Paper;
import io.bindprep.sheet.SheetPdf;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.maven.plugin.MojoExecutionException;

/** The job sheet; that of a document which must not be printed says so, and fails no build. */
final class SheetWork implements Work {
    static final String ENDING = ".job-sheet.pdf";

    private final OutputFolder folder;
    private final Paper paper;
    private final Engine engine;

    SheetWork(OutputFolder folder, Paper paper, Engine engine) {
        this.folder = folder;
        this.paper = paper;
        this.engine = engine;
    }

    /** The paper of this name. */
    static Paper paper(String name) throws MojoExecutionException {
        return switch (name.strip().toLowerCase(Locale.ROOT)) {
            case "a4" -> Paper.A4;
            case "letter" -> Paper.LETTER;
            default ->
                throw new MojoExecutionException(
                        "<paper> (bindprep.paper): no paper is called \"" + name + "\"\n  Known: a4, letter.");
        };
    }

    @Override
    public String settings() {
        return "spec " + paper;
    }

    @Override
    public Made make(PdfInput document, CheckRequest request)
            throws UnreadableInputException, SettingException, IOException {
        Report report = engine.check(request);
        JobSheet sheet = JobSheet.of(report);
        Path file = folder.write(document, ENDING, out -> SheetPdf.write(sheet, paper, out));
        return new Made(
                sheet.good() ? Made.Level.GOOD : Made.Level.CARE,
                document.name() + ": " + (sheet.good() ? "" : sheet.verdict() + "\n  ") + "job sheet: "
                        + folder.shown(file),
                report.document().sha256(),
                List.of(file));
    }

    @Override
    public void unreadable(PdfInput document, UnreadableInputException why) throws IOException {
        folder.remove(document, ENDING);
    }
}
