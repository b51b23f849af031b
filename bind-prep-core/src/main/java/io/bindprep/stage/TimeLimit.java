package io.bindprep.stage;

import io.bindprep.problem.SettingException;
import io.bindprep.problem.SharedMemory;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * One check on threads of its own, so that a hostile file can neither hang the caller nor overflow its stack.
 *
 * <p>The bound is processor time, so that a busy machine changes no verdict; the wall clock only ends what stands still.
 */
public final class TimeLimit {
    /** Opening takes well under two seconds on 14 books of up to 16,565 pages (measured). */
    private static final Duration OPENING = Duration.ofSeconds(15);

    /** A small file's share of it, and what each megabyte adds: recovery of a damaged one must not hold a queue of files. */
    private static final Duration OPENING_SMALL = Duration.ofSeconds(2);

    private static final Duration OPENING_MEGABYTE = Duration.ofSeconds(1);

    /** A scanned page takes about 80 ms (measured). */
    private static final Duration EACH_PAGE = Duration.ofMillis(100);

    private static final Duration STANDSTILL = Duration.ofMinutes(15);
    private static final Duration GLANCE = Duration.ofMillis(250);
    private static final long STACK_BYTES = 32L * 1024 * 1024;
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    /** The task tells what its work throws; Java's own handler would print a stack trace, or run short of memory itself. */
    private static final Thread.UncaughtExceptionHandler TOLD = (thread, thrown) -> {};

    private final List<Thread> threads = new CopyOnWriteArrayList<>();
    private final long begun = System.nanoTime();
    private volatile long most = OPENING.toNanos();

    private TimeLimit() {}

    /**
     * A stage's work.
     *
     * @param <X> what else it throws, such as an {@link java.io.IOException}; where nothing, the compiler finds so
     */
    public interface Work<T, X extends Exception> {
        T run(TimeLimit limit) throws UnreadableInputException, SettingException, X;
    }

    /** Gives a file of so many bytes its time to be opened, until {@link #extendFor} says how many pages it has. */
    void openingFor(long bytes) {
        most = opening(bytes).toNanos();
    }

    static Duration opening(long bytes) {
        Duration own = OPENING_SMALL.plus(OPENING_MEGABYTE.multipliedBy(bytes).dividedBy(1_000_000));
        return own.compareTo(OPENING) < 0 ? own : OPENING;
    }

    /** Gives a document with so many pages its time. */
    public void extendFor(int pages) {
        most = OPENING.plus(EACH_PAGE.multipliedBy(pages)).toNanos();
    }

    /** Runs work on a thread with a deep stack that does not keep the machine from ending. */
    void start(Runnable work) {
        Thread thread = new Thread(null, work, "bind-prep check", STACK_BYTES);
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler(TOLD);
        threads.add(thread);
        thread.start();
    }

    /**
     * Runs work within the limit.
     *
     * @param name how messages call the document
     * @throws UnreadableInputException also where time or memory does not suffice
     * @throws X as the work throws it
     */
    public static <T, X extends Exception> T run(String name, Work<T, X> work)
            throws UnreadableInputException, SettingException, X {
        TimeLimit limit = new TimeLimit();
        FutureTask<T> task = new FutureTask<>(() -> work.run(limit));
        limit.start(task);
        try {
            return limit.await(task, name);
        } catch (ExecutionException e) {
            Throwable cause = Objects.requireNonNullElse(e.getCause(), e);
            if (cause instanceof UnreadableInputException unreadable) {
                throw unreadable;
            }
            if (cause instanceof SettingException setting) {
                throw setting;
            }
            if (cause instanceof StackOverflowError || SharedMemory.ranShort(cause)) {
                throw SharedMemory.tooMuch(name, cause);
            }
            if (cause instanceof RuntimeException || cause instanceof Error) {
                throw new IllegalStateException("the check of " + name + " failed", cause);
            }
            @SuppressWarnings("unchecked") // the only checked ones left that work may throw
            X own = (X) cause;
            throw own;
        } catch (InterruptedException e) {
            task.cancel(true);
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the check of " + name + " was interrupted", e);
        }
    }

    private <T> T await(FutureTask<T> task, String name)
            throws ExecutionException, InterruptedException, UnreadableInputException {
        while (true) {
            try {
                return task.get(GLANCE.toNanos(), TimeUnit.NANOSECONDS);
            } catch (TimeoutException e) {
                if (spent() > most || elapsed() > STANDSTILL.toNanos()) {
                    task.cancel(true);
                    throw new UnreadableInputException(
                            Reason.TOO_MUCH,
                            name + " takes too long to read.",
                            "Ask for the file again, exported afresh, or in parts.");
                }
            }
        }
    }

    private long elapsed() {
        return System.nanoTime() - begun;
    }

    private long spent() {
        if (!CLOCK.isThreadCpuTimeSupported()) {
            return elapsed();
        }
        return threads.stream()
                .mapToLong(t -> Math.max(0, CLOCK.getThreadCpuTime(t.getId())))
                .sum();
    }
}
