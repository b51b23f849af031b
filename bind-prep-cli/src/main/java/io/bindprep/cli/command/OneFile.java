package io.bindprep.cli.command;

import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.console.ProgressLine;
import io.bindprep.cli.console.Terminal;
import io.bindprep.cli.input.ImageReaders;
import io.bindprep.cli.input.StandardInput;
import io.bindprep.cli.job.JobInput;
import io.bindprep.cli.job.NamedFiles;
import io.bindprep.cli.output.FileEnding;
import io.bindprep.files.Inputs;
import io.bindprep.files.Scratch;
import io.bindprep.files.WholeFile;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.text.TextStyle;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Parts shared by the commands that make one file of another: the two files, the job, and the exit code of what went wrong. */
final class OneFile {
    private static final String HTML = "html=";

    @Parameters(paramLabel = "FILE", description = "the PDF file, - for standard input; it is not changed")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private Path file;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            required = true,
            description = "the file to write; overwrites an existing file")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private Path output;

    @Option(names = "--job", paramLabel = "FILE", description = "job file, YAML or JSON")
    private @Nullable Path jobFile;

    @Option(
            names = "--password-file",
            paramLabel = "FILE",
            description = "file whose first line is the password of an encrypted PDF; the output is not encrypted")
    private @Nullable Path passwordFile;

    @Option(names = ImageReaders.OPTION, paramLabel = ImageReaders.LABEL, description = ImageReaders.MEANING)
    private @Nullable Path readers;

    @Mixin
    @SuppressWarnings("unused") // read by picocli
    private final Help help = new Help();

    // the mixin's own would be this class, not the command
    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private CommandSpec command;

    private final InputStream in;
    private final PrintWriter err;
    private final Terminal terminal;

    OneFile(InputStream in, PrintWriter err, Terminal terminal) {
        this.in = in;
        this.err = err;
        this.terminal = terminal;
    }

    /** Work of a command on its file. */
    @FunctionalInterface
    interface Work<T> {
        T of(CheckRequest request) throws UnreadableInputException, SettingException, IOException;
    }

    Path output() {
        return output;
    }

    /**
     * The form of the output, as {@link FileEnding#form}.
     *
     * @param asked the form that an option asks for; null for none
     */
    String form(@Nullable String asked, List<String> forms) {
        try {
            return FileEnding.form(output, asked, forms);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(command.commandLine(), "--output: " + e.getMessage(), e);
        }
    }

    /** The file of a report that an option names as "html=FILE", or by its ending. */
    Path html(String asked) {
        String file = asked.startsWith(HTML) ? asked.substring(HTML.length()) : asked;
        if (file.isBlank()
                || !asked.startsWith(HTML) && !file.toLowerCase(Locale.ROOT).endsWith(".html")) {
            throw wrong("--write: \"" + asked + "\" names no HTML file; write it as html=FILE");
        }
        Path path = Path.of(file);
        if (path.toAbsolutePath().normalize().equals(output.toAbsolutePath().normalize())) {
            throw wrong("--write and --output name the same file");
        }
        return path;
    }

    /** Error in the options. */
    ParameterException wrong(String message) {
        return new ParameterException(command.commandLine(), message);
    }

    /**
     * Does the work and returns the exit code.
     *
     * @param answer tells what was made, once the line of progress is gone; gives the exit code
     */
    <T> int run(Work<T> work, ToIntFunction<T> answer) {
        boolean piped = file.equals(StandardInput.DASH);
        String name = piped ? StandardInput.NAME : file.toString();
        JobInput input = new JobInput(command, jobFile);
        Scratch spooled = null;
        ImageReaders.register(command, readers);
        try {
            Job job = input.read();
            Inputs read = inputs(input, piped);
            WholeFile.check(output, read.plus("the PDF", file));
            if (piped) {
                spooled = spooled();
                file = spooled.path();
            }
            return answer.applyAsInt(made(work, name, job, read));
        } catch (UnreadableInputException e) {
            err.print(TextReport.unreadable(
                    name, e, new TextStyle(false, terminal.style().width())));
            return ExitCode.UNREADABLE;
        } catch (SettingException e) {
            err.println(input.problem(e));
            return ExitCode.USAGE;
        } catch (IOException e) {
            err.println(Problems.cannotWrite("--output", output, e));
            return ExitCode.USAGE;
        } finally {
            if (spooled != null) {
                spooled.close();
            }
        }
    }

    private Inputs inputs(JobInput input, boolean piped) {
        Inputs read = input.inputs();
        if (passwordFile != null) {
            read = read.plus("the password file", passwordFile);
        }
        return piped ? read.plus("standard input", StandardInput.DEVICE) : read;
    }

    private Scratch spooled() {
        try {
            return StandardInput.spooled(in);
        } catch (IOException e) {
            throw new ParameterException(
                    command.commandLine(), "- (standard input): it cannot be kept: " + e.getMessage(), e);
        }
    }

    private <T> T made(Work<T> work, String name, Job job, Inputs read)
            throws UnreadableInputException, SettingException, IOException {
        String password = passwordFile == null ? null : NamedFiles.password(command, passwordFile);
        try (ProgressLine progress = new ProgressLine(err, terminal.showsProgress(), System::nanoTime)) {
            return work.of(new CheckRequest(file, name, job, password, progress).reading(read));
        }
    }
}
