package io.bindprep.cli.console;

import io.bindprep.problem.SettingException;
import io.bindprep.wording.Printable;
import io.bindprep.wording.ProblemWords;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Words what went wrong for someone at a command line: the core's sentences, by options. */
public final class Problems {
    /** No mistake of anyone's. */
    public static final String OUT_OF_MEMORY = ProblemWords.outOfMemory("Java", "BINDPREP_JAVA_OPTS=-Xmx1g");

    private static final Pattern KEY = Pattern.compile("([^.\\[]+)\\.?(.*)");

    private Problems() {}

    /**
     * A wrong setting, named by the option that set it or by its place in the job file.
     *
     * @param place where in the job file it stands; null where an option set it
     */
    public static String setting(SettingException e, @Nullable String place) {
        String named = place == null ? option(e.key()) : place + ": " + e.key();
        return "bind-prep: " + Printable.page(ProblemWords.setting(named, place, e, "bind-prep list"));
    }

    /** A file that was written, by its name: "Job sheet written: book.pdf". */
    public static String written(String what, Path file) {
        return what + " written: " + Printable.of(file.toString());
    }

    /** Our own mistake, but for memory. */
    public static String internal(String where, Throwable e) {
        return "bind-prep: " + Printable.of(where) + ": "
                + ProblemWords.internal(e, OUT_OF_MEMORY, "the file if you may");
    }

    /** A file named by an option that the system will not give us as text. */
    public static String cannotRead(String option, Path file, IOException e) {
        return option + ": " + cannotRead(file, e);
    }

    /** A file that the system will not give us. */
    public static String cannotRead(Path file, IOException e) {
        return "cannot read " + Printable.of(file.toString()) + ": " + ProblemWords.unread(e);
    }

    /** A file named by an option that the system will not let us write. */
    public static String cannotWrite(String option, Path file, IOException e) {
        return cannotWrite(option, file.toString(), e);
    }

    /** One or more files, parted by commas, that the system will not let us write for one reason. */
    public static String cannotWrite(String option, String file, IOException e) {
        String instead = e instanceof FileSystemException ? "" : "; make room there, or name another place";
        return "bind-prep: " + option + ": cannot write "
                + Printable.of(file + ": " + ProblemWords.unwritten(e) + instead);
    }

    // covers.front and inserts[2] are parts of what one option says
    private static String option(String key) {
        Matcher m = KEY.matcher(key);
        return m.matches() ? "--" + m.group(1) + (m.group(2).isEmpty() ? "" : " (" + m.group(2) + ")") : "--" + key;
    }
}
