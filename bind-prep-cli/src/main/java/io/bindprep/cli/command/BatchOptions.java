package io.bindprep.cli.command;

import io.bindprep.cli.console.Choice;
import java.util.concurrent.Semaphore;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** Options of {@code check} for many files. */
final class BatchOptions {
    private static final int MOST_THREADS = 256;

    /** Of a file alone: its own and a helper. */
    private static final int ALONE = 2;

    // so much slowed none of 14 books, half of it two (measured on a trial version)
    private static final long EACH_BYTES = 512L * 1024 * 1024;

    private final OptionSpec threads = Choice.of(
            Integer.class, "--threads", "N", "number of files checked in parallel (by processors and memory)");

    ArgGroupSpec group(int order) {
        return Choice.group(order, "Many files", threads);
    }

    /** Number of files checked in parallel. */
    int threads(CommandSpec command) {
        Integer asked = threads.getValue();
        if (asked == null) {
            Runtime machine = Runtime.getRuntime();
            return (int) Math.max(1, Math.min(machine.availableProcessors(), machine.maxMemory() / EACH_BYTES));
        }
        if (asked < 1 || asked > MOST_THREADS) {
            throw new ParameterException(
                    command.commandLine(), "--threads: \"" + asked + "\" is not from 1 to " + MOST_THREADS);
        }
        return asked;
    }

    /** Permits for threads that look at pages, of all files together. */
    Semaphore pageThreads(CommandSpec command, boolean several) {
        return new Semaphore(threads.getValue() == null && !several ? ALONE : threads(command));
    }
}
