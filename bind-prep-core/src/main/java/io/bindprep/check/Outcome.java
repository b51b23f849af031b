package io.bindprep.check;

/** The answer in a word. */
public enum Outcome {
    /** Nothing at or above the failing severity (an error where nothing fails the job). */
    GOOD,
    /** A plan without a document: nothing at or above the failing severity, and no page was looked at. */
    PLANNED,
    /** Something at or above the failing severity. */
    FINDINGS
}
