package io.bindprep.maven;

import io.bindprep.files.TextFile;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoExecutionException;
import org.codehaus.plexus.configuration.PlexusConfiguration;
import org.jspecify.annotations.Nullable;

/** The places a POM may say the job in: {@code <failOn>} goes before {@code <job>}, that before {@code <jobFile>}. */
record JobSource(
        @Nullable PlexusConfiguration element,
        @Nullable File file,
        @Nullable String failOn) {
    private static final String FAIL_ON = "fail-on";

    /** What all of them say together. */
    JobSettings settings() throws MojoExecutionException {
        JobSettings settings = element == null ? JobSettings.empty() : JobSettings.of(JobElement.settings(element));
        if (failOn != null) {
            settings = settings.with(FAIL_ON, failOn);
        }
        if (file == null) {
            return settings;
        }
        try {
            return settings.over(JobSettings.read(text(file), file.getName()));
        } catch (SettingException e) {
            throw failure("<jobFile>", null, e);
        }
    }

    /** The job that the settings ask for, with the files that they name. */
    Job job(JobSettings settings, Path base) throws MojoExecutionException {
        try {
            return JobReader.toJob(
                    settings, JobFiles.read(settings, (name, beside) -> TextFile.read(named(name, beside, base))));
        } catch (SettingException e) {
            throw wrong(e, settings);
        }
    }

    // what a job file names counts from its folder, what the POM names from that of the POM
    private Path named(String name, boolean beside, Path base) {
        return beside && file != null ? file.toPath().resolveSibling(name) : base.resolve(name);
    }

    /** A wrong setting, named by the place in the build that set it. */
    MojoExecutionException wrong(SettingException e, JobSettings settings) {
        String place = settings.place(e.key()).orElse(null);
        if (place != null) {
            return failure(place + ": " + e.key(), place, e);
        }
        boolean own = e.key().equals(FAIL_ON) && failOn != null;
        return failure(own ? "<failOn> (bindprep.failOn)" : JobElement.named(e.key()), null, e);
    }

    // without its cause, whose message Maven would append
    private static MojoExecutionException failure(String named, @Nullable String place, SettingException e) {
        return new MojoExecutionException(Wording.setting(named, place, e));
    }

    private static String text(File file) throws MojoExecutionException {
        try {
            return TextFile.read(file.toPath());
        } catch (IOException e) {
            throw new MojoExecutionException(
                    "<jobFile>: cannot read " + file.getName() + " ("
                            + e.getClass().getSimpleName() + ")\n  Name a job file that is there, text in UTF-8.",
                    e);
        }
    }
}
