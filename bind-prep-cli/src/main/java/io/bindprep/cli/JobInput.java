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
import picocli.CommandLine.ParameterException;

/** The job of options over a job file, with the files that either names. */
record JobInput(CommandSpec spec, @Nullable Path jobFile) {
    /** The options' settings over those of the job file. */
    JobSettings over(JobSettings options) throws SettingException {
        return jobFile == null ? options : options.over(JobSettings.read(text(jobFile), jobFile.toString()));
    }

    Job job(JobSettings settings) throws SettingException {
        return JobReader.toJob(settings, JobFiles.read(settings, this::named));
    }

    // what a job file names counts from its folder, what an option names from where we are
    private String named(String file, boolean besideJobFile) throws IOException {
        Path named = Path.of(file);
        return TextFile.read(besideJobFile && jobFile != null ? jobFile.resolveSibling(named) : named);
    }

    private String text(Path file) {
        try {
            return TextFile.read(file);
        } catch (IOException e) {
            throw new ParameterException(spec.commandLine(), Problems.cannotRead("--job", file, e), e);
        }
    }
}
