package io.bindprep.cli.batch;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;
import java.util.function.Predicate;

/** Numbered pieces of work on a few threads at once, their results handed on one by one in the order of their numbers. */
public final class InOrder {
    /** Results that may wait for a slow one before them, for each thread. */
    private static final int AHEAD = 32;

    private static final int LAST_SECONDS = 5;

    private InOrder() {}

    /**
     * Does all of it, or until enough is said; the results are handed on in this thread.
     *
     * @param work what is done to each number from 0; must not throw
     * @param next takes each result; false where no more is wanted
     * @throws InterruptedException where this thread is interrupted; work under way is interrupted too
     */
    public static <T> void run(int count, int threads, IntFunction<T> work, Predicate<T> next)
            throws InterruptedException {
        if (threads == 1 || count < 2) {
            for (int i = 0; i < count && next.test(work.apply(i)); i++) {
                if (Thread.interrupted()) {
                    throw new InterruptedException();
                }
            }
            return;
        }
        ExecutorService pool = Executors.newFixedThreadPool(threads, InOrder::thread);
        try {
            Queue<Future<T>> begun = new ArrayDeque<>();
            for (int i = 0; i < count || !begun.isEmpty(); ) {
                while (i < count && begun.size() < threads * AHEAD) {
                    int number = i++;
                    begun.add(pool.submit(() -> work.apply(number)));
                }
                if (!next.test(begun.remove().get())) {
                    return;
                }
            }
        } catch (ExecutionException e) {
            throw new IllegalStateException("work on one of " + count + " files failed", e.getCause());
        } finally {
            pool.shutdownNow();
            // so that nothing is written any more once this returns
            pool.awaitTermination(LAST_SECONDS, TimeUnit.SECONDS);
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "bind-prep file");
        thread.setDaemon(true);
        return thread;
    }
}
