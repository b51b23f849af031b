package io.bindprep.cli;

import io.bindprep.CheckRequest;
import java.io.PrintWriter;
import java.util.function.LongSupplier;

/**
 * One line on stderr that counts pages while a check takes longer than a moment, and is wiped when it ends. The check counts
 * on a thread of its own, which a bound in time may leave behind.
 */
final class ProgressLine implements CheckRequest.Progress, AutoCloseable {
    private static final long A_MOMENT_NS = 400_000_000;
    private static final long REDRAW_NS = 100_000_000;

    private final PrintWriter err;
    private final boolean shown;
    private final LongSupplier nanoTime;
    private long nextAt;
    private int drawn;
    private boolean closed;

    ProgressLine(PrintWriter err, boolean shown, LongSupplier nanoTime) {
        this.err = err;
        this.shown = shown;
        this.nanoTime = nanoTime;
        this.nextAt = nanoTime.getAsLong() + A_MOMENT_NS;
    }

    @Override
    public synchronized void pages(int done, int total) {
        long now = nanoTime.getAsLong();
        if (!shown || closed || now - nextAt < 0) {
            return;
        }
        nextAt = now + REDRAW_NS;
        String line = "page " + done + " of " + total;
        err.print("\r" + line + " ".repeat(Math.max(0, drawn - line.length())));
        err.flush();
        drawn = line.length();
    }

    @Override
    public synchronized void close() {
        closed = true;
        if (drawn > 0) {
            err.print("\r" + " ".repeat(drawn) + "\r");
            err.flush();
            drawn = 0;
        }
    }
}
