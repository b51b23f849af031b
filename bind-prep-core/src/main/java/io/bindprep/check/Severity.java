package io.bindprep.check;

/** Severity of a finding, worst first. */
public enum Severity {
    ERROR,
    WARNING,
    NOTE
}
