package io.bindprep;

import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.time.Duration;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** One check on a thread of its own, so that a hostile file can neither hang the caller nor overflow its stack. */
final class Bounded {
    /** Opening takes well under a second on 14 books of up to 16,248 pages (measured). */
    private static final Duration OPENING = Duration.ofSeconds(15);

    private static final Duration EACH_PAGE = Duration.ofMillis(60);
    private static final long STACK_BYTES = 32L * 1024 * 1024;

    private volatile long end = System.nanoTime() + OPENING.toNanos();

    private Bounded() {}

    interface Work {
        Report run(Bounded bound) throws UnreadableInputException, SettingException;
    }

    /** Gives a document with so many pages its time. */
    void extendFor(int pages) {
        end = end + EACH_PAGE.multipliedBy(pages).toNanos();
    }

    static Report run(String name, Work work) throws UnreadableInputException, SettingException {
        Bounded bound = new Bounded();
        FutureTask<Report> task = new FutureTask<>(() -> work.run(bound));
        start(task);
        try {
            return bound.await(task, name);
        } catch (ExecutionException e) {
            Throwable cause = e.getCause();
            if (cause instanceof UnreadableInputException unreadable) {
                throw unreadable;
            }
            if (cause instanceof SettingException setting) {
                throw setting;
            }
            if (cause instanceof OutOfMemoryError || cause instanceof StackOverflowError) {
                throw new UnreadableInputException(
                        Reason.TOO_MUCH,
                        name + " asks for more memory than there is.",
                        "Give the check more memory, or ask for the document in parts.");
            }
            throw new IllegalStateException("the check of " + name + " failed", cause);
        } catch (InterruptedException e) {
            task.cancel(true);
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the check of " + name + " was interrupted", e);
        }
    }

    /** Runs work on a thread with a deep stack that does not keep the machine from ending. */
    static void start(Runnable work) {
        Thread thread = new Thread(null, work, "bind-prep check", STACK_BYTES);
        thread.setDaemon(true);
        thread.start();
    }

    private Report await(FutureTask<Report> task, String name)
            throws ExecutionException, InterruptedException, UnreadableInputException {
        while (true) {
            long seen = end;
            try {
                return task.get(Math.max(1, seen - System.nanoTime()), TimeUnit.NANOSECONDS);
            } catch (TimeoutException e) {
                if (end - seen <= 0) {
                    task.cancel(true);
                    throw new UnreadableInputException(
                            Reason.TOO_MUCH,
                            name + " takes too long to read.",
                            "Ask for the file again, exported afresh, or in parts.");
                }
            }
        }
    }
}
