package io.bindprep.problem;

import io.bindprep.problem.UnreadableInputException.Reason;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Supplier;

/**
 * Memory that several works share, and the one place that knows how Java tells the want of it.
 *
 * <p>Work that runs short in company runs once more alone, so that company changes no verdict.
 */
public final class SharedMemory {
    /** Reason why a page was not looked at. */
    public static final String PAGE_ASKS_TOO_MUCH = "it asks for more memory than there is";

    private final ReadWriteLock company = new ReentrantReadWriteLock();

    /** Work that may run short; what else it throws, the compiler finds. */
    public interface Work<T, X extends Exception, Y extends Exception> {
        T run() throws X, Y;
    }

    /** Runs work beside others, and where memory runs short once more alone. */
    public <T, X extends Exception, Y extends Exception> T run(Work<T, X, Y> work) throws X, Y {
        Lock shared = company.readLock();
        shared.lock();
        try {
            return work.run();
        } catch (Exception | Error e) {
            if (!isMendedAlone(e)) {
                throw e;
            }
        } finally {
            shared.unlock();
        }
        Lock alone = company.writeLock();
        alone.lock();
        try {
            return work.run();
        } finally {
            alone.unlock();
        }
    }

    /** Runs work; the other answer where memory runs short. */
    public static <T, X extends Exception> T orElse(Work<T, X, X> work, Supplier<T> answer) throws X {
        try {
            return work.run();
        } catch (OutOfMemoryError e) {
            return answer.get();
        }
    }

    /** A document that asks for more memory than there is. */
    public static UnreadableInputException tooMuch(String name, Throwable cause) {
        UnreadableInputException tooMuch = new UnreadableInputException(
                Reason.TOO_MUCH,
                name + " asks for more memory than there is.",
                "Give the check more memory, or ask for the document in parts.");
        tooMuch.initCause(cause);
        return tooMuch;
    }

    /** Returns true if other memory would have been enough: a class that could not be prepared stays so. */
    public static boolean isMendedAlone(Throwable e) {
        return e instanceof OutOfMemoryError
                || e instanceof UnreadableInputException && e.getCause() instanceof OutOfMemoryError;
    }

    /**
     * Returns true if an error tells of want of memory: Java wraps it where it links code, and keeps only its name where a
     * class could not be prepared for want of it.
     */
    public static boolean ranShort(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof OutOfMemoryError
                    || cause instanceof ExceptionInInitializerError
                            && String.valueOf(cause.getMessage()).contains(OutOfMemoryError.class.getName())) {
                return true;
            }
        }
        return false;
    }
}
