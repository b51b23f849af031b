package io.bindprep.cli.output;

import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;

/**
 * The form of answers. What words one is safe on several threads at once; what prints is for one, in the order of the files.
 */
public interface ReportOutput extends AutoCloseable {
    /** Sentence on one file, and its place. */
    record Said(String out, String err) {}

    /** A file that was checked. */
    Said report(Report report);

    /** A file that could not be read. */
    Said unreadable(String file, UnreadableInputException e);

    /**
     * A file for which the job asks what there is not.
     *
     * @param worded the problem in words for people
     */
    Said wrongSetting(String file, SettingException e, String worded);

    /**
     * A file that our own mistake kept from its check.
     *
     * @param worded the problem in words for people
     */
    Said internal(String file, String worded);

    /** Prints one file's part of standard output. */
    void print(String out);

    @Override
    void close();
}
