package io.bindprep.proof;

import io.bindprep.check.Report;
import java.util.List;

/**
 * Result of a proof.
 *
 * @param output the name of the file that was to be written, as the caller gave it
 * @param report the check it shows
 * @param pages pages written, by their number in the document; none where no file was written
 * @param comments how many annotations were added
 * @param notes what to know of the file that was written
 * @param refusals why no file was written; empty where one was
 */
public record ProofReport(
        Result outcome,
        String output,
        Report report,
        List<Integer> pages,
        int comments,
        List<String> notes,
        List<String> refusals) {
    /** Result of writing. */
    public enum Result {
        /** A file. */
        WRITTEN,
        /** None, as only flagged pages were asked for and there is none. */
        NOTHING_FLAGGED,
        /** None, as it may not or cannot be done. */
        REFUSED
    }

    public ProofReport {
        pages = List.copyOf(pages);
        notes = List.copyOf(notes);
        refusals = List.copyOf(refusals);
    }
}
