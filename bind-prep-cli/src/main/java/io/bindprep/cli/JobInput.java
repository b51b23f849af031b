package io.bindprep.cli;

import io.bindprep.files.TextFile;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;

/** The job that a command line asks for: its options over its job file, with the files that either names. */
final class JobInput {
    private final CommandSpec command;
    private final @Nullable Path jobFile;
    private JobSettings settings;

    JobInput(CommandSpec command, @Nullable Path jobFile) {
        this(command, jobFile, JobOptions.settings(command.commandLine().getParseResult()));
    }

    JobInput(CommandSpec command, @Nullable Path jobFile, JobSettings options) {
        this.command = command;
        this.jobFile = jobFile;
        this.settings = options;
    }

    Job read() throws SettingException {
        if (jobFile != null) {
            settings = settings.over(JobSettings.read(NamedFiles.text(command, "--job", jobFile), jobFile.toString()));
        }
        return JobReader.toJob(settings, JobFiles.read(settings, this::named));
    }

    /** What to say of a wrong setting, with its place in the job file. */
    String problem(SettingException e) {
        return Problems.setting(e, settings.place(e.key()).orElse(null));
    }

    // what a job file names counts from its folder, what an option names from where we are
    private String named(String file, boolean besideJobFile) throws IOException {
        Path named = Path.of(file);
        return TextFile.read(besideJobFile && jobFile != null ? jobFile.resolveSibling(named) : named);
    }
}
