package io.bindprep.cli.job;

import io.bindprep.cli.console.Problems;
import io.bindprep.files.Inputs;
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
public final class JobInput {
    /** Name of the job file among the inputs. */
    public static final String JOB = "the job file";

    /** Name of the punch file among the inputs. */
    public static final String PUNCH = "the punch file";

    private final CommandSpec command;
    private final @Nullable Path jobFile;
    private JobSettings settings;
    private JobFiles files = JobFiles.NONE;
    private Inputs inputs = Inputs.NONE;
    private boolean together;

    public JobInput(CommandSpec command, @Nullable Path jobFile) {
        this(command, jobFile, JobOptions.settings(command.commandLine().getParseResult()));
    }

    public JobInput(CommandSpec command, @Nullable Path jobFile, JobSettings options) {
        this.command = command;
        this.jobFile = jobFile;
        this.settings = options;
    }

    /** The settings of options and job file together, not yet judged. */
    public JobSettings settings() throws SettingException {
        if (jobFile != null && !together) {
            inputs = inputs.plus(JOB, jobFile);
            settings = settings.over(JobSettings.read(NamedFiles.text(command, "--job", jobFile), jobFile.toString()));
        }
        together = true;
        return settings;
    }

    public Job read() throws SettingException {
        settings();
        files = JobFiles.read(settings, this::named);
        return JobReader.toJob(settings, files);
    }

    /** All that was read, as text that differs where a job could. */
    public String wording() {
        return settings + "\n" + files;
    }

    /** Sentence on a wrong setting, with its place in the job file. */
    public String problem(SettingException e) {
        return Problems.setting(e, settings.place(e.key()).orElse(null));
    }

    /** The files that were read for it, and so are not written over. */
    public Inputs inputs() {
        return inputs;
    }

    private boolean isPunch(String file) {
        return settings.value("punch").filter(file::equals).isPresent();
    }

    // names in a job file count from its folder, those of options from where we are
    private String named(String file, boolean besideJobFile) throws IOException {
        Path named = Path.of(file);
        Path path = besideJobFile && jobFile != null ? jobFile.resolveSibling(named) : named;
        inputs = inputs.plus(isPunch(file) ? PUNCH : "a table of the job", path);
        return TextFile.read(path);
    }
}
