package io.bindprep.cli.command;

import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Options of {@code check} for many files. */
final class BatchOptions {
    private static final int MOST_THREADS = 256;

    /** Of a file alone: its own and a helper. */
    private static final int ALONE = 2;

    // so much slowed none of 14 books, half of it two (measured on a trial version)
    private static final long EACH_BYTES = 512L * 1024 * 1024;

    @Option(
            names = "--threads",
            paramLabel = "N",
            description = "number of files checked in parallel (by processors and memory)")
    private @Nullable Integer threads;

    /** Number of files checked in parallel. */
    int threads(CommandSpec command) {
        if (threads == null) {
            Runtime machine = Runtime.getRuntime();
            return (int) Math.max(1, Math.min(machine.availableProcessors(), machine.maxMemory() / EACH_BYTES));
        }
        if (threads < 1 || threads > MOST_THREADS) {
            throw new ParameterException(
                    command.commandLine(), "--threads: \"" + threads + "\" is not from 1 to " + MOST_THREADS);
        }
        return threads;
    }

    /** Permits for threads that look at pages, of all files together. */
    Semaphore pageThreads(CommandSpec command, boolean several) {
        return new Semaphore(threads == null && !several ? ALONE : threads(command));
    }
}
