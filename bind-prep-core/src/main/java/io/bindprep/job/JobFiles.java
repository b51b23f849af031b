package io.bindprep.job;

import io.bindprep.catalogue.PunchFile;
import io.bindprep.problem.SettingException;
import io.bindprep.setting.Scalars;
import io.bindprep.table.NamedText;
import io.bindprep.wording.ProblemWords;
import java.io.IOException;
import java.io.Serializable;
import java.nio.file.InvalidPathException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The files that a job names, as the front end read them. With {@link JobSettings} they are a whole job in a form that
 * may be sent to another machine.
 *
 * @param tables the shop's own tables, in order
 * @param punch the file of its punch; null where the job names none or a punch by name
 */
public record JobFiles(List<NamedText> tables, @Nullable NamedText punch) implements Serializable {
    /** No file at all. */
    public static final JobFiles NONE = new JobFiles(List.of(), null);

    public JobFiles {
        tables = List.copyOf(tables);
    }

    /** Reads one file for a job. */
    @FunctionalInterface
    public interface Opener {
        /**
         * The text of a file.
         *
         * @param file as the job names it
         * @param besideJobFile whether the job file names it, so that it counts from that file's folder
         */
        String text(String file, boolean besideJobFile) throws IOException;
    }

    /**
     * Reads what the settings name.
     *
     * @throws SettingException where a file cannot be read
     */
    public static JobFiles read(JobSettings settings, Opener opener) throws SettingException {
        List<NamedText> tables = new ArrayList<>();
        for (String file : named(settings)) {
            tables.add(new NamedText(file, text(settings, JobKeys.TABLES, file, opener)));
        }
        String file = punch(settings);
        return new JobFiles(
                tables, file == null ? null : new NamedText(file, text(settings, JobKeys.PUNCH, file, opener)));
    }

    /** The tables that the settings name, in order. */
    static List<String> named(JobSettings settings) throws SettingException {
        Object value = settings.value(JobKeys.TABLES).orElse(null);
        if (value == null || "none".equals(value)) {
            return List.of();
        }
        List<?> items = value instanceof List<?> list
                ? list
                : Arrays.asList((Object[]) Scalars.text(JobKeys.TABLES, value).split("\\s*;\\s*"));
        List<String> files = new ArrayList<>();
        for (Object item : items) {
            files.add(Scalars.text(JobKeys.TABLES + "[" + (files.size() + 1) + "]", item));
        }
        return files;
    }

    /** The punch file that the settings name; null where they name none, or a punch by name. */
    static @Nullable String punch(JobSettings settings) throws SettingException {
        Object value = settings.value(JobKeys.PUNCH).orElse(null);
        String named = value == null ? "" : Scalars.text(JobKeys.PUNCH, value);
        return PunchFile.isNamed(named) ? named : null;
    }

    private static String text(JobSettings settings, String key, String file, Opener opener) throws SettingException {
        try {
            return opener.text(file, settings.place(key).isPresent());
        } catch (IOException | InvalidPathException e) {
            throw Scalars.wrong(
                    key,
                    file,
                    "cannot be read: " + ProblemWords.unread(e),
                    "Name a file that is there, text in UTF-8; in a job file its name counts from that file's folder.");
        }
    }

    /** Fails where the settings name a file that nobody read. */
    void checkWhole(JobSettings settings) throws SettingException {
        List<String> read = tables.stream().map(NamedText::name).toList();
        String missing = named(settings).stream()
                .filter(file -> !read.contains(file))
                .findFirst()
                .orElse(null);
        if (missing != null) {
            throw unchecked(JobKeys.TABLES, missing);
        }
        String file = punch(settings);
        if (file != null && (punch == null || !file.equals(punch.name()))) {
            throw unchecked(JobKeys.PUNCH, file);
        }
    }

    private static SettingException unchecked(String key, String file) {
        return Scalars.wrong(key, file, "was not read", "Give the job with the files that it names.");
    }
}
