package io.bindprep.cli;

/** What the command returns to its shell; of several files the highest counts. */
final class ExitCode {
    static final int GOOD = 0;
    static final int FINDINGS = 1;
    static final int USAGE = 2;
    static final int UNREADABLE = 3;
    static final int INTERNAL = 4;

    private ExitCode() {}
}
