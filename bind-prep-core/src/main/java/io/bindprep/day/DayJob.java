package io.bindprep.day;

import io.bindprep.check.Report;

/**
 * A job of the day.
 *
 * @param name how the list calls it
 * @param report of its document, or its plan where there is none
 */
public record DayJob(String name, Report report) {}
