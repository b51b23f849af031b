package io.bindprep.cli.watch;

import io.bindprep.cli.batch.Answer;
import io.bindprep.cli.batch.Summary;
import io.bindprep.cli.console.BuildFacts;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.output.OutputOptions;
import io.bindprep.files.Inputs;
import io.bindprep.wording.Printable;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** A watch as a command: what it prints, its exit code, and its end by Ctrl-C or a signal to terminate. */
public final class WatchSession {
    // service managers give a service 90 s or so before they kill it (common practice, no source)
    private static final int MOST_SECONDS_TO_END = 80;

    // a run that ends sooner needs no word
    private static final int SOON_MILLIS = 500;

    private final PrintWriter out;
    private final PrintWriter err;
    private final OutputOptions answers;
    private final Summary summary = new Summary();

    public WatchSession(PrintWriter out, PrintWriter err, OutputOptions answers) {
        this.out = out;
        this.err = err;
        this.answers = answers;
    }

    /**
     * Watches; returns the exit code.
     *
     * @param wording of the job
     * @param passwordFile that opens encrypted files; null for none
     * @param read files that no report is written over
     */
    public int run(
            WatchOptions.Settings settings,
            Watch.Checker checker,
            int threads,
            String wording,
            @Nullable Path passwordFile,
            Inputs read) {
        String digest =
                digest(BuildFacts.read() + "\n" + wording + "\n" + settings.reports() + "\n" + mark(passwordFile));
        Watch watch = new Watch(settings, checker, threads, digest, read, err, this::told);
        CountDownLatch ended = new CountDownLatch(1);
        Thread watching = Thread.currentThread();
        Thread hook = new Thread(() -> end(watch, watching, ended, settings.once()));
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            int worst = watch.run();
            if (watch.full()) {
                err.println("bind-prep: the watch ends here, as the disk of "
                        + Printable.of(settings.out().toString())
                        + " is full: make room there, or name another folder (--out), and start it again");
            }
            if (settings.once() || watch.full()) {
                err.print(summary.text(summary.files() + watch.waiting()));
            }
            return settings.once() || watch.full() ? worst : ExitCode.GOOD;
        } catch (IOException e) {
            err.println(Problems.cannotWrite("--out", settings.out().resolve(Ledger.NAME), e));
            return ExitCode.USAGE;
        } finally {
            ended.countDown();
            remove(hook);
        }
    }

    private boolean told(Answer answer) {
        summary.add(answer);
        if (answers.format() == OutputOptions.Format.jsonl) {
            out.print(answer.out());
        } else {
            String gist = answer.gist().isEmpty() ? "" : ": " + answer.gist();
            out.print(answer.kind().column() + Printable.of(answer.name() + gist) + "\n");
        }
        out.flush();
        // a fault of the file stands in its line; a fault of ours or of the disk does not
        if (answer.reports() != Answer.Reports.WRITTEN || answer.kind() == Answer.Kind.INTERNAL) {
            err.print(answer.err());
            err.flush();
        }
        return !out.checkError();
    }

    // runs in the process's end; the exit code would be that of the signal, though all ended as it should
    private void end(Watch watch, Thread watching, CountDownLatch ended, boolean told) {
        watch.stop();
        try {
            boolean done = ended.await(SOON_MILLIS, TimeUnit.MILLISECONDS);
            if (!done) {
                err.println("bind-prep: told to end; finishing the file at hand");
                err.flush();
                done = ended.await(MOST_SECONDS_TO_END, TimeUnit.SECONDS);
            }
            if (!done) {
                watching.interrupt();
                done = ended.await(SOON_MILLIS, TimeUnit.MILLISECONDS);
            }
            if (done) {
                err.println("bind-prep: stopped; what was not finished is checked the next time");
                err.print(told ? "" : summary.text(summary.files() + watch.waiting()));
                err.flush();
                out.flush();
                Runtime.getRuntime().halt(ExitCode.GOOD);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void remove(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            return; // it is running
        }
    }

    // another password may open what this one did not; the password itself is kept nowhere
    private static String mark(@Nullable Path passwordFile) {
        try {
            if (passwordFile == null) {
                return "";
            }
            FileStamp stamp = FileStamp.of(passwordFile);
            return passwordFile + " " + stamp.size() + " " + stamp.modifiedNanos();
        } catch (IOException e) {
            return "";
        }
    }

    private static String digest(String text) {
        try {
            byte[] bytes = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has it", e);
        }
    }
}
