package io.bindprep.wording;

import io.bindprep.problem.SettingException;
import io.bindprep.problem.SharedMemory;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Sentences on what went wrong; a front end adds what it calls the thing, and its own ways out. */
public final class ProblemWords {
    /** A longer list would push what matters out of sight. */
    private static final int MOST_KNOWN = 12;

    private ProblemWords() {}

    /**
     * A setting that is wrong.
     *
     * @param named what the front end calls it, with its place where it stands in a job file
     * @param place where in a job file it stands, which the core says too; null where it stands in none
     * @param whole how to see a long list of what is known; null where the list is said whole
     */
    public static String setting(String named, @Nullable String place, SettingException e, @Nullable String whole) {
        String message = Objects.requireNonNull(e.getMessage()).replace(" (" + place + ")", "");
        boolean told = e.remedy().contains("Did you mean")
                || message.contains("nearest in the table")
                || message.endsWith(": say which");
        String near = told ? null : Spelling.nearest(e.value(), e.known());
        String meant = near == null ? "" : "\n  Did you mean \"" + near + "\"?";
        boolean said = e.remedy().contains(String.join(", ", e.known()));
        String shortList = said || !few(e.known(), whole) ? "" : "\n  Known: " + String.join(", ", e.known()) + ".";
        String longList =
                said || few(e.known(), whole) ? "" : " All " + e.known().size() + " names: " + whole;
        return named + ": " + message + meant + shortList + "\n  " + Capital.sentence(e.remedy()) + longList;
    }

    private static boolean few(List<String> known, @Nullable String whole) {
        return whole == null || known.size() <= MOST_KNOWN;
    }

    /**
     * Memory that ran out, which is no mistake of anyone's.
     *
     * @param who the program that uses it
     * @param more how to give it more
     */
    public static String outOfMemory(String who, String more) {
        return "the memory that " + who + " may use ran out." + "\n  Give it more, for example with " + more
                + ", or check the document in parts.";
    }

    /**
     * Our own mistake: its first cause and where in our code it showed, instead of a stack trace.
     *
     * @param outOfMemory said where it is only that
     * @param with things a report of it should come with
     */
    public static String internal(Throwable e, String outOfMemory, String with) {
        if (SharedMemory.ranShort(e)) {
            return outOfMemory;
        }
        Throwable first = first(e);
        String message = first.getMessage();
        String place = Arrays.stream(first.getStackTrace())
                .filter(frame -> frame.getClassName().startsWith("io.bindprep."))
                .findFirst()
                .map(frame -> " at " + frame.getClassName() + ":" + frame.getLineNumber())
                .orElse("");
        return "internal error, " + first.getClass().getSimpleName() + place + (message == null ? "" : ": " + message)
                + "\n  This is a bug in bind-prep, please report it, with " + with + ".";
    }

    /** A few words for {@link #internal}, to stand in a list. */
    public static String internalGist(Throwable e) {
        return SharedMemory.ranShort(e) ? "the memory ran out" : "this is a bug in bind-prep";
    }

    private static Throwable first(Throwable e) {
        Throwable first = e;
        while (first.getCause() != null) {
            first = first.getCause();
        }
        return first;
    }

    /** Reason why a file of text that someone named could not be read. */
    public static String unread(Exception e) {
        if (e instanceof NoSuchFileException) {
            return "there is no such file";
        }
        if (e instanceof AccessDeniedException) {
            return "the system refuses access";
        }
        if (e instanceof CharacterCodingException) {
            return "it is not text in UTF-8";
        }
        String reason = e instanceof FileSystemException system ? system.getReason() : null;
        return reason == null ? "the system does not give it as a file" : reason;
    }

    /** Reason why a file could not be written. */
    public static String unwritten(IOException e) {
        return e instanceof FileSystemException system
                ? Objects.requireNonNullElse(system.getReason(), "the system refuses it")
                : "the disk is full or refuses it (" + e.getMessage() + ")";
    }
}
