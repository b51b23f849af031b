package io.bindprep.cli.input;

import io.bindprep.problem.UnreadableInputException;
import java.io.File;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * One file to check.
 *
 * @param file where it is
 * @param name how reports call it, with slashes on every system
 * @param problem why it is known beforehand that it cannot be read, such as a folder that does not open; null otherwise
 */
public record InputFile(Path file, String name, @Nullable UnreadableInputException problem) {
    static InputFile of(Path file) {
        return new InputFile(file, name(file), null);
    }

    public static String name(Path file) {
        return file.toString().replace(File.separatorChar, '/');
    }
}
