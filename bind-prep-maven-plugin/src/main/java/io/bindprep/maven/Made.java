package io.bindprep.maven;

import io.bindprep.report.build.SummaryRow;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Files that a goal made of one document.
 *
 * @param message what the log says of it
 * @param sha256 digest of the document's bytes as they were looked at, lower-case hexadecimal
 * @param files every file of it, in a fixed order
 * @param row of the summary; null where none is asked for
 */
record Made(
        Level level,
        String message,
        String sha256,
        List<Path> files,
        @Nullable SummaryRow row) {
    /** Files of which no summary tells. */
    Made(Level level, String message, String sha256, List<Path> files) {
        this(level, message, sha256, files, null);
    }

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
