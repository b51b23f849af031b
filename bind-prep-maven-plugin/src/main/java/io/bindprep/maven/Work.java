package io.bindprep.maven;

import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.build.SummaryRow;
import io.bindprep.request.CheckRequest;
import java.io.IOException;

/** Work of a goal on one document. */
interface Work {
    /** The goal's own settings that what it makes depends on, as one line of text. */
    String settings();

    /** Makes the files of a document. */
    Made make(PdfInput document, CheckRequest request) throws UnreadableInputException, SettingException, IOException;

    /** Leaves nothing of an earlier build standing for a document that cannot be read now. */
    void unreadable(PdfInput document, UnreadableInputException why) throws IOException;

    /**
     * Takes in what came of a document, where one file tells of all.
     *
     * @param place of the document in the build
     */
    default void add(int place, SummaryRow row) {}

    /** Writes the file that tells of all documents, of so many. */
    default void finish(int documents) throws IOException {}
}
