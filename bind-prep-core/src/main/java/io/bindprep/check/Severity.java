package io.bindprep.check;

/** How bad a finding is, worst first. */
public enum Severity {
    ERROR,
    WARNING,
    NOTE
}
