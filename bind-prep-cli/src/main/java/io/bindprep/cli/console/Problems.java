package io.bindprep.cli.console;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.Spelling;
import io.bindprep.wording.Printable;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Words what went wrong for someone at a command line. */
public final class Problems {
    /** No mistake of anyone's. */
    public static final String OUT_OF_MEMORY = "the memory that Java may use ran out."
            + "\n  Give it more, for example with BINDPREP_JAVA_OPTS=-Xmx1g, or check the document in parts.";

    private static final Pattern KEY = Pattern.compile("([^.\\[]+)\\.?(.*)");

    private static final int MOST_KNOWN = 12;

    private Problems() {}

    /**
     * A wrong setting, named by the option that set it or by its place in the job file.
     *
     * @param place where in the job file it stands; null where an option set it
     */
    public static String setting(SettingException e, @Nullable String place) {
        String named = place == null ? option(e.key()) : place + ": " + e.key();
        // the core says the place too, behind what is wrong
        String message = Objects.requireNonNull(e.getMessage()).replace(" (" + place + ")", "");
        String known = String.join(", ", e.known());
        String list = e.remedy().contains(known) ? "" : known(e.known());
        String near = e.remedy().contains("Did you mean") ? null : Spelling.nearest(e.value(), e.known());
        String meant = near == null ? "" : "\n  Did you mean \"" + near + "\"?";
        return "bind-prep: " + named + ": " + message + meant + list + "\n  " + sentence(e.remedy());
    }

    // a whole table would push what matters off the screen
    private static String known(List<String> known) {
        return known.size() <= MOST_KNOWN
                ? "\n  Known: " + String.join(", ", known) + "."
                : "\n  All " + known.size() + " names: bind-prep list";
    }

    private static String sentence(String text) {
        String capital = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
        return capital.endsWith(".") ? capital : capital + ".";
    }

    /** First cause, without the exceptions that wrap it. */
    public static Throwable first(Throwable e) {
        Throwable first = e;
        while (first.getCause() != null) {
            first = first.getCause();
        }
        return first;
    }

    /** Our own mistake: its first cause and where in our code it showed, instead of a stack trace. */
    public static String internal(String where, Throwable e) {
        Throwable first = first(e);
        if (first instanceof OutOfMemoryError) {
            return "bind-prep: " + shown(where) + ": " + OUT_OF_MEMORY;
        }
        String message = first.getMessage();
        String place = Arrays.stream(first.getStackTrace())
                .filter(frame -> frame.getClassName().startsWith("io.bindprep."))
                .findFirst()
                .map(frame -> " at " + frame.getClassName() + ":" + frame.getLineNumber())
                .orElse("");
        return "bind-prep: " + shown(where) + ": internal error, "
                + first.getClass().getSimpleName() + place + (message == null ? "" : ": " + message)
                + "\n  This is a bug in bind-prep, please report it, with the file if you may.";
    }

    /** A file named by an option that the system will not give us as text. */
    public static String cannotRead(String option, Path file, IOException e) {
        String why;
        if (e instanceof NoSuchFileException) {
            why = "there is no such file";
        } else if (e instanceof AccessDeniedException) {
            why = "the system refuses access";
        } else if (e instanceof CharacterCodingException) {
            why = "it is not text in UTF-8";
        } else if (Files.isDirectory(file)) {
            why = "it is a directory";
        } else {
            why = "reading it failed";
        }
        return option + ": cannot read " + file + ": " + why;
    }

    /** A file named by an option that the system will not let us write. */
    public static String cannotWrite(String option, Path file, IOException e) {
        String why = e instanceof FileSystemException system
                ? Objects.requireNonNullElse(system.getReason(), "the system refuses it")
                : "the disk is full or refuses it (" + e.getMessage() + "); make room there, or name another place";
        return "bind-prep: " + option + ": cannot write " + file + ": " + why;
    }

    /** Without control and direction marks: a file's name could rewrite the screen. */
    public static String shown(String text) {
        return Printable.of(text);
    }

    // covers.front and inserts[2] are parts of what one option says
    private static String option(String key) {
        Matcher m = KEY.matcher(key);
        return m.matches() ? "--" + m.group(1) + (m.group(2).isEmpty() ? "" : " (" + m.group(2) + ")") : "--" + key;
    }
}
