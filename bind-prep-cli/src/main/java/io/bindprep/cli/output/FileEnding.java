package io.bindprep.cli.output;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The form of a file that is to be written: by the ending of its name, unless the name contradicts what was asked for. */
public final class FileEnding {
    private static final List<String> FORMS = List.of("pdf", "html", "json", "txt", "sarif", "xjdf", "yaml", "md");

    private FileEnding() {}

    /**
     * The form to write.
     *
     * @param asked the form that was asked for; null for that of the ending
     * @param forms the forms there are, by their endings; the first holds for a name without ending
     * @throws IllegalArgumentException where the name ends as another form does; the message says what would do
     */
    public static String form(Path file, @Nullable String asked, List<String> forms) {
        String ending = ending(file);
        if (asked != null) {
            if (FORMS.contains(ending) && !ending.equals(asked)) {
                throw new IllegalArgumentException(file + " ends in ." + ending + ", but the format asked for is "
                        + asked + "; end its name in ." + asked + ", or ask for another format");
            }
            return asked;
        }
        if (ending.isEmpty()) {
            return forms.get(0);
        }
        if (!forms.contains(ending)) {
            throw new IllegalArgumentException(
                    file + " ends in ." + ending + ", which is not a format of this file; end its" + " name in "
                            + forms.stream().map(f -> "." + f).collect(Collectors.joining(" or ")));
        }
        return ending;
    }

    /** Ending of a name in lower case, without its point; empty where it has none. */
    static String ending(Path file) {
        Path name = file.getFileName();
        String text = name == null ? "" : name.toString();
        int point = text.lastIndexOf('.');
        String ending = point < 1 ? "" : text.substring(point + 1).toLowerCase(Locale.ROOT);
        return ending.equals("htm") ? "html" : ending;
    }
}
