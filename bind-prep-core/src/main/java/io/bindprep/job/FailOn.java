package io.bindprep.job;

/** The least severity of a finding that fails a check. */
public enum FailOn {
    ERROR,
    WARNING,
    NEVER
}
