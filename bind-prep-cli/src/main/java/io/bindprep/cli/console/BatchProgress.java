package io.bindprep.cli.console;

import io.bindprep.request.CheckRequest;
import java.io.PrintWriter;
import java.util.function.LongSupplier;

/**
 * One line on stderr for a run over many files: how many are done, how fast, how long it may still take. The time left goes
 * by the bytes of the files that are done, as many small files and a few large ones are usual.
 */
public final class BatchProgress {
    private static final long SECOND_NS = 1_000_000_000;
    // earlier than this the guess is worse than none
    private static final long SETTLED_NS = 3 * SECOND_NS;

    private final StatusLine line;
    private final boolean shown;
    private final LongSupplier nanoTime;
    private final int files;
    private final long bytes;
    private final long begun;
    private long nextAt;
    private int filesDone;
    private int bad;
    private long bytesDone;
    private long pages;
    private boolean paused;

    /**
     * A line that has not been drawn yet.
     *
     * @param files how many there are
     * @param bytes of all of them together
     */
    public BatchProgress(PrintWriter err, boolean shown, LongSupplier nanoTime, int files, long bytes) {
        this.line = new StatusLine(err);
        this.shown = shown;
        this.nanoTime = nanoTime;
        this.files = files;
        this.bytes = bytes;
        this.begun = nanoTime.getAsLong();
        this.nextAt = begun + ProgressLine.A_MOMENT_NS;
    }

    /** For the check of one file. */
    public CheckRequest.Progress ofFile() {
        return new CheckRequest.Progress() {
            private int counted;

            @Override
            public void pages(int done, int total) {
                page(Math.max(0, done - counted));
                counted = Math.max(counted, done);
            }
        };
    }

    private synchronized void page(int more) {
        pages += more;
        draw();
    }

    /** A file is done. */
    public synchronized void file(long size, boolean good) {
        filesDone++;
        bytesDone += size;
        bad += good ? 0 : 1;
        draw();
    }

    /** Gives way to other output; nothing is drawn until {@link #resume}, and nobody waits for that output. */
    public synchronized void pause() {
        line.wipe();
        paused = true;
    }

    /** Draws again. */
    public synchronized void resume() {
        paused = false;
    }

    private void draw() {
        long now = nanoTime.getAsLong();
        if (!shown || paused || now - nextAt < 0) {
            return;
        }
        nextAt = now + ProgressLine.REDRAW_NS;
        line.show(text(now - begun));
    }

    private String text(long spent) {
        String failed = bad == 0 ? "" : " (" + bad + " not good)";
        String rate = ", " + Math.round((double) pages * SECOND_NS / spent) + " pages/s";
        String left = spent < SETTLED_NS || bytesDone == 0
                ? ""
                : ", about " + duration((double) (bytes - bytesDone) / bytesDone * spent) + " left";
        return filesDone + " of " + files + " files" + failed + rate + left;
    }

    private static String duration(double nanos) {
        long seconds = Math.round(nanos / SECOND_NS);
        if (seconds < 60) {
            return Math.max(1, seconds) + " s";
        }
        long minutes = Math.round(seconds / 60.0);
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }
}
