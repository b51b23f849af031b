package io.bindprep.cli;

import io.bindprep.problem.SettingException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Words what went wrong for someone at a command line. */
final class Problems {
    private Problems() {}

    /**
     * A wrong setting, named by the option that set it or by its place in the job file.
     *
     * @param place where in the job file it stands; null where an option set it
     */
    static String setting(SettingException e, @Nullable String place) {
        String message = Objects.requireNonNull(e.getMessage());
        if (place == null) {
            message = option(e.key()) + ": " + without(e.key() + ": ", message);
        } else if (!message.startsWith(place)) {
            message = place + ": " + message;
        }
        String known = String.join(", ", e.known());
        String list = e.remedy().contains(known) ? "" : "\n  Known: " + known + ".";
        return "bind-prep: " + message + list + "\n  " + e.remedy();
    }

    private static String without(String prefix, String text) {
        return text.startsWith(prefix) ? text.substring(prefix.length()) : text;
    }

    /** Our own mistake: its first cause and where in our code it showed, instead of a stack trace. */
    static String internal(String where, Throwable e) {
        Throwable first = e;
        while (first.getCause() != null) {
            first = first.getCause();
        }
        String message = first.getMessage();
        String place = Arrays.stream(first.getStackTrace())
                .filter(frame -> frame.getClassName().startsWith("io.bindprep."))
                .findFirst()
                .map(frame -> " at " + frame.getClassName() + ":" + frame.getLineNumber())
                .orElse("");
        return "bind-prep: " + where + ": internal error, "
                + first.getClass().getSimpleName() + place + (message == null ? "" : ": " + message)
                + "\n  This is a bug in bind-prep, please report it, with the file if you may.";
    }

    /** A file named by an option that the system will not give us as text. */
    static String cannotRead(String option, Path file, IOException e) {
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

    // covers.front and inserts[2] are parts of what one option says
    private static String option(String key) {
        String whole = key.split("[.\\[]", 2)[0];
        String part = without(".", key.substring(whole.length()));
        return "--" + whole + (part.isEmpty() ? "" : " (" + part + ")");
    }
}
