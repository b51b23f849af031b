package io.bindprep.cli;

import io.bindprep.BindPrep;
import io.bindprep.CheckRequest;
import io.bindprep.ShiftRequest;
import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.report.ShiftText;
import io.bindprep.report.TextReport;
import io.bindprep.report.TextStyle;
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

/** {@code bind-prep shift}: a repaired copy of one file. */
@Command(
        name = "shift",
        description = "Writes a copy of a PDF with its content moved clear of the holes.",
        customSynopsis = "bind-prep shift [OPTIONS] FILE -o FILE",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:written, and its check is good",
            "1:written, but its check still has findings at or above --fail-on; or nothing written, as it cannot be done",
            "2:wrong usage or settings, or the file could not be written",
            "3:the file could not be read",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nExample:%n",
        footer = "  bind-prep shift --stock bond-20 book.pdf -o book-shifted.pdf")
final class ShiftCommand implements Callable<Integer> {
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

    @Option(names = "--page-by-page", description = "move each page only as far as it must, not all pages alike")
    private boolean pageByPage;

    @Option(
            names = "--gutter",
            paramLabel = "LENGTH",
            description = "move every page by this much, whatever the check finds")
    private @Nullable String gutter;

    @Option(
            names = "--outer-margin",
            paramLabel = "LENGTH",
            description = "what is moved keeps this from the outer edge (5 mm)")
    private @Nullable String outerMargin;

    @Option(
            names = "--least-scale",
            paramLabel = "PERCENT",
            description = "where there is no room to move, scale to no less than this (90 %%)")
    private @Nullable String leastScale;

    @Option(
            names = "--blank-versos",
            description = "a blank page behind each page: a one-sided document on a two-sided machine")
    private boolean blankVersos;

    @Option(names = "--pad", description = "blank pages where the book leaves a back blank, so that each leaf has two")
    private boolean pad;

    @Option(names = "--allow-signed", description = "change a signed document; the copy's signatures are taken out")
    private boolean allowSigned;

    @Option(names = "--job", paramLabel = "FILE", description = "job file, YAML or JSON")
    private @Nullable Path jobFile;

    @Option(
            names = "--password-file",
            paramLabel = "FILE",
            description = "file whose first line is the password of an encrypted PDF; what is written is not encrypted")
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

    ShiftCommand(PrintWriter out, PrintWriter err, Terminal terminal) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        JobSettings settings = JobOptions.settings(spec.commandLine().getParseResult());
        String name = file.toString();
        try {
            if (jobFile != null) {
                settings = settings.over(JobSettings.read(NamedFiles.text(spec, "--job", jobFile), jobFile.toString()));
            }
            ShiftReport shift = shifted(
                    name,
                    JobReader.toJob(
                            settings,
                            JobFiles.read(settings, (named, beside) -> NamedFiles.named(jobFile, named, beside))));
            out.print(ShiftText.write(shift, terminal.style()));
            Report after = shift.after();
            boolean good = shift.outcome() != ShiftReport.Outcome.REFUSED && after != null && !after.failed();
            return good ? ExitCode.GOOD : ExitCode.FINDINGS;
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

    private ShiftReport shifted(String name, Job job) throws UnreadableInputException, SettingException, IOException {
        ShiftSettings settings =
                ShiftSettings.of(pageByPage, gutter, outerMargin, leastScale, blankVersos, pad, allowSigned);
        String password = passwordFile == null ? null : NamedFiles.password(spec, passwordFile);
        try (ProgressLine progress = new ProgressLine(err, terminal.showsProgress(), System::nanoTime)) {
            CheckRequest check = new CheckRequest(file, name, job, password, progress);
            return BindPrep.shift(new ShiftRequest(check, output, output.toString(), settings));
        }
    }
}
