package io.bindprep.check;

/** The answer in a word. */
public enum Outcome {
    /** Nothing at or above the failing severity (an error where nothing fails the job). */
    GOOD,
    /** Something at or above the failing severity. */
    FINDINGS
}
