package io.bindprep.stage;

import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.jspecify.annotations.Nullable;

/**
 * One check on threads of its own, so that a hostile file can neither hang the caller nor overflow its stack.
 *
 * <p>The bound is processor time, so that a busy machine changes no verdict; the wall clock only ends what stands still.
 */
public final class TimeLimit {
    /** Opening takes well under two seconds on 14 books of up to 16,565 pages (measured). */
    private static final Duration OPENING = Duration.ofSeconds(15);

    /** A scanned page takes about 80 ms (measured). */
    private static final Duration EACH_PAGE = Duration.ofMillis(100);

    private static final Duration STANDSTILL = Duration.ofMinutes(15);
    private static final Duration GLANCE = Duration.ofMillis(250);
    private static final long STACK_BYTES = 32L * 1024 * 1024;
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

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

    /** Gives a document with so many pages its time. */
    public void extendFor(int pages) {
        most = OPENING.plus(EACH_PAGE.multipliedBy(pages)).toNanos();
    }

    /** Runs work on a thread with a deep stack that does not keep the machine from ending. */
    void start(Runnable work) {
        Thread thread = new Thread(null, work, "bind-prep check", STACK_BYTES);
        thread.setDaemon(true);
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
            Throwable cause = e.getCause();
            if (cause instanceof UnreadableInputException unreadable) {
                throw unreadable;
            }
            if (cause instanceof SettingException setting) {
                throw setting;
            }
            if (cause instanceof StackOverflowError || wantsMemory(cause)) {
                UnreadableInputException tooMuch = new UnreadableInputException(
                        Reason.TOO_MUCH,
                        name + " asks for more memory than there is.",
                        "Give the check more memory, or ask for the document in parts.");
                tooMuch.initCause(cause);
                throw tooMuch;
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

    /** Java wraps it where it links code, and keeps only its name where a class could not be prepared for want of it. */
    private static boolean wantsMemory(@Nullable Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof OutOfMemoryError
                    || cause instanceof ExceptionInInitializerError
                            && String.valueOf(cause.getMessage()).contains(OutOfMemoryError.class.getName())) {
                return true;
            }
        }
        return false;
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
