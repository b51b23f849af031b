package io.bindprep.cli.output;

import io.bindprep.check.Report;
import io.bindprep.cli.console.Problems;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/** The files that reports are written to; safe on several threads for different inputs. */
public interface ReportFiles {
    /** A report that could not be written, and why. */
    record Unwritten(Path file, IOException why) {}

    /** The option that asks for them. */
    String option();

    /**
     * Writes every report of a document.
     *
     * @param input which one, from 0
     * @param took time of its check
     * @return for each that could not be written which it is and why
     */
    List<Unwritten> write(int input, CheckRequest request, Report report, Duration took)
            throws UnreadableInputException;

    /** Writes what there is to say of a document that could not be read; returns as {@link #write}. */
    List<Unwritten> unreadable(int input, String name, UnreadableInputException why);

    /** Notes that a document was not checked for another reason, in a sentence. */
    void unchecked(int input, String name, String why);

    /** Reports that could not be written in words, a line each; empty where all are. */
    default String told(List<Unwritten> unwritten) {
        StringBuilder lines = new StringBuilder();
        unwritten.forEach(u ->
                lines.append(Problems.cannotWrite(option(), u.file(), u.why())).append('\n'));
        return lines.toString();
    }
}
