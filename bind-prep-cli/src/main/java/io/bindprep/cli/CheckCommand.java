package io.bindprep.cli;

import io.bindprep.BindPrep;
import io.bindprep.CheckRequest;
import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code bind-prep check}: each file against one job, the worst answer as exit code. */
@Command(
        name = "check",
        description = "Says of each PDF whether to print it and how to bind it.",
        customSynopsis = "bind-prep check [OPTIONS] FILE...",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes, of several files the highest:%n",
        exitCodeList = {
            "0:good",
            "1:findings at or above --fail-on",
            "2:wrong usage or settings",
            "3:a file could not be read",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nExample:%n",
        footer = "  bind-prep check --stock bond-20 --sides two --pitch 3:1 book.pdf")
final class CheckCommand implements Callable<Integer> {
    /** How answers are written. */
    enum Format {
        text,
        json
    }

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "the PDF files")
    private List<Path> files = List.of();

    @Option(names = "--job", paramLabel = "FILE", description = "job file, YAML or JSON")
    private @Nullable Path jobFile;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "text, or json: one object, an array of them for several files")
    private Format format = Format.text;

    @Option(names = "--all-pages", description = "list every page in the JSON, not only those that are not clear")
    private boolean allPages;

    @Option(
            names = "--password-file",
            paramLabel = "FILE",
            description = "file whose first line is the password of encrypted PDFs")
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

    /** The check itself. */
    @FunctionalInterface
    interface Engine {
        /** As {@link BindPrep#check}. */
        Report check(CheckRequest request) throws UnreadableInputException, SettingException;
    }

    private final PrintWriter out;
    private final PrintWriter err;
    private final Terminal terminal;
    private final Engine engine;

    CheckCommand(PrintWriter out, PrintWriter err, Terminal terminal, Engine engine) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
        this.engine = engine;
    }

    @Override
    public Integer call() {
        JobSettings settings = JobOptions.settings(spec.commandLine().getParseResult());
        Job job;
        try {
            if (jobFile != null) {
                settings = settings.over(JobSettings.read(NamedFiles.text(spec, "--job", jobFile), jobFile.toString()));
            }
            job = JobReader.toJob(
                    settings, JobFiles.read(settings, (name, beside) -> NamedFiles.named(jobFile, name, beside)));
        } catch (SettingException e) {
            return wrongSetting(e, settings);
        }
        String password = passwordFile == null ? null : NamedFiles.password(spec, passwordFile);
        int worst = ExitCode.GOOD;
        try (ReportOutput output = output()) {
            for (Path file : files) {
                worst = Math.max(worst, check(file, job, password, settings, output));
            }
        }
        return worst;
    }

    private int check(Path file, Job job, @Nullable String password, JobSettings settings, ReportOutput output) {
        String name = file.toString();
        try {
            Report report = checked(file, name, job, password);
            output.report(report);
            return report.failed() ? ExitCode.FINDINGS : ExitCode.GOOD;
        } catch (UnreadableInputException e) {
            output.unreadable(name, e);
            return ExitCode.UNREADABLE;
        } catch (SettingException e) {
            return wrongSetting(e, settings);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            // one file's trouble keeps no other from its answer
            err.println(Problems.internal(name, e));
            return ExitCode.INTERNAL;
        }
    }

    private Report checked(Path file, String name, Job job, @Nullable String password)
            throws UnreadableInputException, SettingException {
        try (ProgressLine progress = new ProgressLine(err, terminal.showsProgress(), System::nanoTime)) {
            return engine.check(new CheckRequest(file, name, job, password, progress));
        }
    }

    private ReportOutput output() {
        boolean several = files.size() > 1;
        return switch (format) {
            case json -> new JsonOutput(out, several, allPages);
            case text -> new TextOutput(out, err, terminal.style(), several);
        };
    }

    private int wrongSetting(SettingException e, JobSettings settings) {
        err.println(Problems.setting(e, settings.place(e.key()).orElse(null)));
        return ExitCode.USAGE;
    }
}
