package io.bindprep.cli.console;

import java.io.PrintWriter;

/** A line on a terminal that rewrites itself and is wiped when it ends. Not safe for several threads. */
final class StatusLine {
    private final PrintWriter err;
    private int drawn;

    StatusLine(PrintWriter err) {
        this.err = err;
    }

    void show(String line) {
        err.print("\r" + line + " ".repeat(Math.max(0, drawn - line.length())));
        err.flush();
        drawn = line.length();
    }

    void wipe() {
        if (drawn > 0) {
            err.print("\r" + " ".repeat(drawn) + "\r");
            err.flush();
            drawn = 0;
        }
    }
}
