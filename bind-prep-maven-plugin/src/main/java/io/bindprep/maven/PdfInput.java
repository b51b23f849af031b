package io.bindprep.maven;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * One PDF of a goal. (Not called after an element of the POM: Maven would make one of it.)
 *
 * @param name its path in the project, with slashes on every system: what reports and messages call it
 * @param report name of its reports without ending
 * @param portable its path in the project; of one that lies elsewhere no folder of this machine more than tells it from others
 * @param document what the POM says of it alone; null where it says nothing
 */
record PdfInput(
        Path file,
        String name,
        String report,
        String portable,
        @Nullable Document document) {
    /** A PDF in the project. */
    PdfInput(Path file, String name, String report, @Nullable Document document) {
        this(file, name, report, name, document);
    }
}
