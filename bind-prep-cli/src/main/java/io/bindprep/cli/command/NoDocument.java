package io.bindprep.cli.command;

import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.job.JobInput;
import io.bindprep.files.Inputs;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Parts shared by the commands that need a job but no document: the job file, and the exit code of what went wrong. */
final class NoDocument {
    @Option(names = "--job", paramLabel = "FILE", description = "job file, YAML or JSON")
    private @Nullable Path jobFile;

    @Mixin
    @SuppressWarnings("unused") // read by picocli
    private final Help help = new Help();

    // the mixin's own would be this class, not the command
    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private CommandSpec command;

    private final PrintWriter err;

    NoDocument(PrintWriter err) {
        this.err = err;
    }

    /** Does what a command does with its job; the inputs are what it was read from. */
    @FunctionalInterface
    interface Work {
        void with(Job job, Inputs inputs) throws SettingException, IOException;
    }

    CommandSpec command() {
        return command;
    }

    /**
     * Does the work and returns the exit code.
     *
     * @param output the file that it writes
     */
    int run(Path output, Work work) {
        JobInput input = new JobInput(command, jobFile);
        try {
            Job job = input.read();
            work.with(job, input.inputs());
            return ExitCode.GOOD;
        } catch (SettingException e) {
            err.println(input.problem(e));
        } catch (IOException e) {
            err.println(Problems.cannotWrite("--output", output, e));
        }
        return ExitCode.USAGE;
    }
}
