package io.bindprep.maven;

import io.bindprep.files.Inputs;
import io.bindprep.files.TextFile;
import io.bindprep.job.Job;
import io.bindprep.job.JobFiles;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;
import org.codehaus.plexus.configuration.PlexusConfiguration;
import org.jspecify.annotations.Nullable;

/**
 * The places a POM may say a job in, the nearest first: a {@code <job>} goes before the {@code <jobFile>} beside it, what
 * stands in a document before what stands in the goal, and {@code <failOn>} before all of them.
 */
final class JobSource {
    private static final String FAIL_ON = "fail-on";

    private final List<Level> levels;
    private final @Nullable String failOn;
    private final String document;

    /** A job and the file beneath it. */
    private record Level(
            @Nullable PlexusConfiguration element, @Nullable File file) {}

    /** A job, the texts of the files that it names, and the paths of all files that were read for it. */
    record Asked(JobSettings settings, JobFiles files, Job job, Inputs inputs) {
        /** All that the job was made of, as one text. */
        String text() {
            return settings + "\n" + files;
        }
    }

    JobSource(@Nullable PlexusConfiguration element, @Nullable File file, @Nullable String failOn) {
        this(List.of(new Level(element, file)), failOn, "");
    }

    private JobSource(List<Level> levels, @Nullable String failOn, String document) {
        this.levels = levels;
        this.failOn = failOn;
        this.document = document;
    }

    /** This one beneath what a document says. */
    JobSource under(@Nullable PlexusConfiguration element, @Nullable File file, String name) {
        List<Level> all = new ArrayList<>(List.of(new Level(element, file)));
        all.addAll(levels);
        return new JobSource(all, failOn, name + ": ");
    }

    /**
     * The job that all of them ask for together.
     *
     * @param base the folder that relative files of the POM count from
     */
    Asked read(Path base) throws MojoExecutionException {
        JobSettings settings = failOn == null ? JobSettings.empty() : JobSettings.of(Map.of(FAIL_ON, failOn));
        Map<Path, JobSettings> files = new LinkedHashMap<>();
        for (Level level : levels) {
            if (level.element != null) {
                settings = settings.over(JobSettings.of(JobElement.settings(level.element)));
            }
            if (level.file != null) {
                Path file = base.resolve(level.file.toPath());
                JobSettings said = ofFile(file);
                files.put(file, said);

                settings = settings.over(said);
            }
        }
        JobSettings all = settings;
        try {
            List<Path> named = new ArrayList<>();
            JobFiles texts = JobFiles.read(all, (name, inFile) -> {
                Path file = inFile ? beside(name, files) : base.resolve(name);
                named.add(file);
                return TextFile.read(file);
            });
            return new Asked(all, texts, JobReader.toJob(all, texts), inputs(files.keySet(), named));
        } catch (SettingException e) {
            // without its cause, whose message Maven would append
            throw new MojoExecutionException(wrong(e, all));
        }
    }

    private static Inputs inputs(Collection<Path> jobs, List<Path> named) {
        Inputs inputs = Inputs.NONE;
        for (Path job : jobs) {
            inputs = inputs.plus("the job file", job);
        }
        for (Path file : named) {
            inputs = inputs.plus("a file of the job", file);
        }
        return inputs;
    }

    private JobSettings ofFile(Path file) throws MojoExecutionException {
        String name = String.valueOf(file.getFileName());
        try {
            return JobSettings.read(TextFile.read(file), name);
        } catch (SettingException e) {
            throw new MojoExecutionException(document + Wording.setting("<jobFile>", null, e));
        } catch (IOException e) {
            throw new MojoExecutionException(document + Wording.cannotRead("<jobFile>", name, e), e);
        }
    }

    // names in a job file count from the folder of that one of them
    private static Path beside(String name, Map<Path, JobSettings> files) {
        return files.entrySet().stream()
                .filter(e -> e.getValue().keys().stream()
                        .flatMap(key -> e.getValue().value(key).stream())
                        .anyMatch(value -> names(value, name)))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseGet(() -> files.keySet().iterator().next())
                .resolveSibling(name);
    }

    private static boolean names(Object value, String file) {
        if (value instanceof List<?> items) {
            return items.stream().anyMatch(item -> names(item, file));
        }
        return Stream.of(String.valueOf(value).split(";"))
                .anyMatch(part -> part.strip().equals(file));
    }

    /** Says what is wrong with a setting, named by the place in the build that set it. */
    String wrong(SettingException e, JobSettings settings) {
        String place = settings.place(e.key()).orElse(null);
        if (place != null) {
            return document + Wording.setting(place + ": " + e.key(), place, e);
        }
        boolean own = e.key().equals(FAIL_ON) && failOn != null;
        return document + Wording.setting(own ? "<failOn> (bindprep.failOn)" : JobElement.named(e.key()), null, e);
    }
}
