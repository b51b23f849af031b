package io.bindprep.cli;

import io.bindprep.BindPrep;
import io.bindprep.CheckRequest;
import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import java.io.File;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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

    @Option(
            names = "--write",
            paramLabel = "FORMAT=FILE",
            description =
                    "also write a report to a file, in the format text, json, html, sarif, junit or xjdf; {name} in it"
                            + " stands for each PDF's name; or DIR/: every format into that folder; may be repeated")
    private List<String> writes = List.of();

    @Option(
            names = "--all-pages",
            description = "list every page in the JSON on standard output, not only those that are not clear")
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
        JobInput input = new JobInput(spec, jobFile);
        Job job;
        try {
            job = input.read();
        } catch (SettingException e) {
            return wrongSetting(e, input);
        }
        String password = passwordFile == null ? null : NamedFiles.password(spec, passwordFile);
        WrittenReports written = written();
        int worst = ExitCode.GOOD;
        try (ReportOutput output = output()) {
            for (int i = 0; i < files.size(); i++) {
                worst = Math.max(worst, check(i, job, password, input, output, written));
            }
        }
        return worst;
    }

    private WrittenReports written() {
        try {
            return WrittenReports.of(
                    writes, files, files.stream().map(CheckCommand::name).toList());
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--write " + e.getMessage(), e);
        }
    }

    // the same on every system
    private static String name(Path file) {
        return file.toString().replace(File.separatorChar, '/');
    }

    private int check(
            int index,
            Job job,
            @Nullable String password,
            JobInput input,
            ReportOutput output,
            WrittenReports written) {
        Path file = files.get(index);
        String name = name(file);
        try {
            List<WrittenReports.Unwritten> unwritten;
            Report report;
            // the line is gone before the answer comes
            try (ProgressLine progress = new ProgressLine(err, terminal.showsProgress(), System::nanoTime)) {
                CheckRequest request = new CheckRequest(file, name, job, password, progress);
                report = engine.check(request);
                unwritten = written.write(index, request, report);
            }
            output.report(report);
            return Math.max(report.failed() ? ExitCode.FINDINGS : ExitCode.GOOD, told(unwritten));
        } catch (UnreadableInputException e) {
            output.unreadable(name, e);
            return Math.max(ExitCode.UNREADABLE, told(written.unreadable(index, name, e)));
        } catch (SettingException e) {
            return wrongSetting(e, input);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            // one file's trouble keeps no other from its answer
            err.println(Problems.internal(name, e));
            return ExitCode.INTERNAL;
        }
    }

    private int told(List<WrittenReports.Unwritten> unwritten) {
        unwritten.forEach(u -> err.println(Problems.cannotWrite("--write", u.file(), u.why())));
        return unwritten.isEmpty() ? ExitCode.GOOD : ExitCode.USAGE;
    }

    private ReportOutput output() {
        boolean several = files.size() > 1;
        return switch (format) {
            case json -> new JsonOutput(out, several, allPages);
            case text -> new TextOutput(out, err, terminal.style(), several);
        };
    }

    private int wrongSetting(SettingException e, JobInput input) {
        err.println(input.problem(e));
        return ExitCode.USAGE;
    }
}
