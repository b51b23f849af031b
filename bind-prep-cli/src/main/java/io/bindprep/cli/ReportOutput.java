package io.bindprep.cli;

import io.bindprep.check.Report;
import io.bindprep.problem.UnreadableInputException;

/** Where the answers of one run go, in the order of its files. */
interface ReportOutput extends AutoCloseable {
    /** A file that was checked. */
    void report(Report report);

    /** A file that could not be read. */
    void unreadable(String file, UnreadableInputException e);

    @Override
    void close();
}
