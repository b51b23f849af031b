package io.bindprep.maven;

import java.nio.file.Path;
import java.util.List;

/**
 * Files that a goal made of one document.
 *
 * @param message what the log says of it
 * @param sha256 digest of the document's bytes as they were looked at, lower-case hexadecimal
 * @param files every file of it, in a fixed order
 */
record Made(Level level, String message, String sha256, List<Path> files) {
    /** Result for the build. */
    enum Level {
        /** Said in passing. */
        GOOD,
        /** Said as a warning. */
        CARE,
        /** Fails the build. */
        BAD
    }

    Made {
        files = List.copyOf(files);
    }
}
