package io.bindprep.cli;

import io.bindprep.CheckRequest;
import io.bindprep.check.Report;
import io.bindprep.files.WholeFile;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.JsonReport;
import io.bindprep.report.TextReport;
import io.bindprep.report.TextStyle;
import io.bindprep.report.VerdictSentence;
import io.bindprep.sheet.JobSheet;
import io.bindprep.sheet.Paper;
import io.bindprep.sheet.SheetPdf;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code bind-prep spec}: the job sheet of one document. */
@Command(
        name = "spec",
        description =
                "Writes the job sheet of a PDF: what to set, punch, gather and close, with the bound edge at true size.",
        customSynopsis = "bind-prep spec [OPTIONS] FILE -o FILE",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:written, and the document is good",
            "1:written, but the document has findings at or above --fail-on; the sheet says so",
            "2:wrong usage or settings, or the sheet could not be written",
            "3:the file could not be read; nothing is written",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nExample:%n",
        footer = "  bind-prep spec --stock bond-20 --copies 40 book.pdf -o book-sheet.pdf")
final class SpecCommand implements Callable<Integer> {
    /** How the sheet is written. */
    enum Format {
        pdf,
        json
    }

    /** What a PDF sheet is printed on. */
    enum PaperName {
        a4,
        letter
    }

    @Parameters(paramLabel = "FILE", description = "the PDF file; it stays as it is")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private Path file;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            required = true,
            description = "the file to write; one that is there is replaced")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private Path output;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "pdf, to be printed at full size; or json, the report with the run (pdf)")
    private Format format = Format.pdf;

    @Option(names = "--paper", paramLabel = "PAPER", description = "a4 or letter (a4)")
    private PaperName paper = PaperName.a4;

    @Option(names = "--job", paramLabel = "FILE", description = "job file, YAML or JSON")
    private @Nullable Path jobFile;

    @Option(
            names = "--password-file",
            paramLabel = "FILE",
            description = "file whose first line is the password of an encrypted PDF")
    private @Nullable Path passwordFile;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this help")
    @SuppressWarnings("unused") // read by picocli
    private boolean help;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private CommandSpec spec;

    private final PrintWriter out;
    private final PrintWriter err;
    private final Terminal terminal;
    private final CheckCommand.Engine engine;

    SpecCommand(PrintWriter out, PrintWriter err, Terminal terminal, CheckCommand.Engine engine) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
        this.engine = engine;
    }

    @Override
    public Integer call() {
        JobSettings settings = JobOptions.settings(spec.commandLine().getParseResult());
        String name = file.toString();
        try {
            if (jobFile != null) {
                settings = settings.over(JobSettings.read(NamedFiles.text(spec, "--job", jobFile), jobFile.toString()));
            }
            Job job = JobReader.toJob(
                    settings, JobFiles.read(settings, (named, beside) -> NamedFiles.named(jobFile, named, beside)));
            Report report = checked(name, job);
            write(report);
            out.println(VerdictSentence.of(report));
            out.println("Job sheet written: " + output);
            return report.failed() ? ExitCode.FINDINGS : ExitCode.GOOD;
        } catch (UnreadableInputException e) {
            err.print(TextReport.unreadable(
                    name, e, new TextStyle(false, terminal.style().width())));
            return ExitCode.UNREADABLE;
        } catch (SettingException e) {
            err.println(Problems.setting(e, settings.place(e.key()).orElse(null)));
            return ExitCode.USAGE;
        } catch (IOException e) {
            err.println(Problems.cannotWrite("--output", output, e));
            return ExitCode.USAGE;
        }
    }

    private Report checked(String name, Job job) throws UnreadableInputException, SettingException {
        String password = passwordFile == null ? null : NamedFiles.password(spec, passwordFile);
        try (ProgressLine progress = new ProgressLine(err, terminal.showsProgress(), System::nanoTime)) {
            return engine.check(new CheckRequest(file, name, job, password, progress));
        }
    }

    private void write(Report report) throws IOException {
        switch (format) {
            case json -> WholeFile.write(output, JsonReport.write(report, false), file);
            case pdf ->
                WholeFile.write(
                        output,
                        stream -> SheetPdf.write(
                                JobSheet.of(report), paper == PaperName.a4 ? Paper.A4 : Paper.LETTER, stream),
                        file);
        }
    }
}
