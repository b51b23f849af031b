package io.bindprep.cli.console;

/** Exit codes of the command; of several files the highest counts. */
public final class ExitCode {
    public static final int GOOD = 0;
    public static final int FINDINGS = 1;
    public static final int USAGE = 2;
    public static final int UNREADABLE = 3;
    public static final int INTERNAL = 4;

    private ExitCode() {}
}
