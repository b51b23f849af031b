package io.bindprep.request;

import java.time.Duration;

/**
 * Surroundings of a report that its document does not tell: where it stands, how long it took. Forms that servers and clients
 * read on another machine show them.
 *
 * @param name of the document, the same on every machine, and no other document's in this run
 * @param path of the document from the folder of the run; where it lies elsewhere, as it was given
 * @param took time of the check; zero where the same bytes are wanted from every run
 * @param pictures path from this report to the same message with pictures; empty where there is none
 */
public record ReportContext(String name, String path, Duration took, String pictures) {
    /** A report alone, of a run that nobody timed. */
    public static ReportContext of(String document) {
        return new ReportContext(document, document, Duration.ZERO, "");
    }
}
