package io.bindprep.report.json;

import io.bindprep.check.Report;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;

/**
 * Writes a report as JSON, schema version 1: names never change their meaning, new ones may come. Lengths are millimetres
 * rounded to four decimals, grams to one. {@code io/bindprep/schema/report.schema.json} describes every member.
 */
public final class JsonReport {
    /** The version of {@code io/bindprep/schema/report.schema.json}. */
    public static final int SCHEMA_VERSION = 2;

    private JsonReport() {}

    /**
     * The report, indented, ending in a line feed; the same bytes for the same report everywhere.
     *
     * @param allPages whether clear pages are listed too
     */
    public static String write(Report r, boolean allPages) {
        return Json.text(JsonChecked.of(r, allPages));
    }

    /** As {@link #write}, on one line, for output of one line a file. */
    public static String line(Report r, boolean allPages) {
        return Json.line(JsonChecked.of(r, allPages));
    }

    /** As {@link #unreadable}, on one line. */
    public static String unreadableLine(String file, UnreadableInputException e) {
        return Json.line(JsonUnreadable.of(file, e));
    }

    /** Line on a file for which the job asks what there is not. */
    public static String wrongSettingLine(String file, SettingException e) {
        return Json.line(JsonUnchecked.of(file, e));
    }

    /**
     * Line on a file that a mistake of our own kept from its check.
     *
     * @param message what went wrong, in a sentence
     */
    public static String internalErrorLine(String file, String message) {
        return Json.line(JsonUnchecked.internal(file, message));
    }

    /** The job alone, as it stands in a report. */
    public static String job(Job job) {
        return Json.text(JsonJob.of(job));
    }

    /** Report on a file that could not be read at all. */
    public static String unreadable(String file, UnreadableInputException e) {
        return Json.text(JsonUnreadable.of(file, e));
    }
}
