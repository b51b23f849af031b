package io.bindprep.cli.output;

import io.bindprep.check.Report;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.nio.file.Path;
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
     * @return for each that could not be written which it is and why
     */
    List<Unwritten> write(int input, CheckRequest request, Report report) throws UnreadableInputException;

    /** Writes what there is to say of a document that could not be read; returns as {@link #write}. */
    List<Unwritten> unreadable(int input, String name, UnreadableInputException why);
}
