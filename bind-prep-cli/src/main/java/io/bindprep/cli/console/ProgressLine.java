package io.bindprep.cli.console;

import io.bindprep.request.CheckRequest;
import java.io.PrintWriter;
import java.util.function.LongSupplier;

/**
 * One line on stderr that counts pages while a check takes longer than a moment, and is wiped when it ends. The check counts
 * on a thread of its own, which a bound in time may leave behind.
 */
public final class ProgressLine implements CheckRequest.Progress, AutoCloseable {
    static final long A_MOMENT_NS = 400_000_000;
    static final long REDRAW_NS = 100_000_000;

    private final StatusLine line;
    private final boolean shown;
    private final LongSupplier nanoTime;
    private long nextAt;
    private boolean closed;

    public ProgressLine(PrintWriter err, boolean shown, LongSupplier nanoTime) {
        this.line = new StatusLine(err);
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
        line.show("page " + done + " of " + total);
    }

    @Override
    public synchronized void close() {
        closed = true;
        line.wipe();
    }
}
