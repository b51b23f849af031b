package io.bindprep.setting;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One setting, described once for everything that tells people of it.
 *
 * @param key as it stands in the file
 * @param label what a help text calls its value ("LENGTH")
 * @param meaning what it says, a few words without a full stop
 * @param builtIn the value that holds where nothing is said, as written in a file; null where {@code otherwise} says it
 * @param otherwise what holds where nothing is said and no one value stands for it; "" where {@code builtIn} does
 * @param form how it may be written, a few words; "" where the shape says it all
 * @param examples values as written on one line of a YAML file, the best first
 * @param shape how it is written
 */
public record KeyDescription(
        String key,
        String label,
        String meaning,
        @Nullable String builtIn,
        String otherwise,
        String form,
        List<String> examples,
        ValueShape shape) {
    private static final String REQUIRED = "must be given";

    public KeyDescription {
        examples = List.copyOf(examples);
        if ((builtIn == null) == otherwise.isEmpty()) {
            throw new IllegalArgumentException(key + " needs either a built-in value or words for it");
        }
    }

    /** A key that no file can be without, so that nothing is built in. */
    public static KeyDescription required(
            String key, String meaning, String form, ValueShape shape, List<String> examples) {
        return new KeyDescription(key, "", meaning, null, REQUIRED, form, examples, shape);
    }

    /** Returns true if no file can be without it. */
    public boolean required() {
        return otherwise.equals(REQUIRED);
    }

    /** Value where nothing is said, in a few words. */
    public String unsaid() {
        return builtIn == null ? otherwise : builtIn;
    }
}
