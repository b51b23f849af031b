package io.bindprep.cli.watch;

import io.bindprep.cli.batch.Answer;
import io.bindprep.cli.batch.FileCheck;
import io.bindprep.cli.batch.InOrder;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.input.FolderWalk;
import io.bindprep.cli.input.InputFile;
import io.bindprep.cli.output.ReportFiles;
import io.bindprep.files.Inputs;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.wording.Printable;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Looks into a folder again and again, for shares tell nobody of changes, and checks each file once it has stopped growing:
 * once for its bytes, the job and this version, however often the watch is started.
 */
public final class Watch {
    /** Makes the check of files that were found, with where their reports go. */
    @FunctionalInterface
    public interface Checker {
        FileCheck of(ReportFiles reports);
    }

    /** Told of each file in turn; false where no more is wanted. */
    @FunctionalInterface
    interface Listener {
        boolean checked(Answer answer);
    }

    private final WatchOptions.Settings settings;
    private final Checker checker;
    private final int threads;
    private final String digest;
    private final Inputs read;
    private final PrintWriter err;
    private final Listener listener;
    private final Settling settling = new Settling();
    private final Set<String> refused = new HashSet<>();
    private final Set<String> unwritten = new HashSet<>();
    private final Object bell = new Object();
    private List<Path> pdfs = List.of();
    private volatile boolean stopping;
    private boolean full;
    private int waiting;
    private int worst = ExitCode.GOOD;

    /**
     * A watch that has not begun.
     *
     * @param digest of everything but the file that an answer hangs on
     * @param read files that no report is written over
     */
    Watch(
            WatchOptions.Settings settings,
            Checker checker,
            int threads,
            String digest,
            Inputs read,
            PrintWriter err,
            Listener listener) {
        this.settings = settings;
        this.checker = checker;
        this.threads = threads;
        this.digest = digest;
        this.read = read;
        this.err = err;
        this.listener = listener;
    }

    /**
     * Watches until it is stopped, or makes one pass.
     *
     * @return the worst exit code of what was checked
     * @throws IOException where the ledger cannot be kept: without it nothing is sure to be checked once
     */
    int run() throws IOException {
        Files.createDirectories(settings.out());
        look(); // for the files that the ledger is not written over
        try (Ledger ledger = Ledger.open(settings.out(), inputs())) {
            if (settings.once()) {
                pass(ledger);
            } else {
                while (check(settled(look(), ledger), ledger)) {
                    pause();
                }
            }
        } catch (InterruptedException e) {
            return worst; // stopped: what was not finished is checked the next time
        } catch (IOException e) {
            if (!stopping) {
                throw e;
            }
        }
        return worst;
    }

    /** Ends it once the files at hand are done; called from another thread, which may interrupt the one that runs. */
    void stop() {
        synchronized (bell) {
            stopping = true;
            bell.notifyAll();
        }
    }

    /** Returns true if it ended as the disk of the reports is full. */
    boolean full() {
        return full;
    }

    /** Number of files that were found and not checked when it ended. */
    int waiting() {
        return waiting;
    }

    private void pause() throws InterruptedException {
        synchronized (bell) {
            long end = System.nanoTime() + settings.interval().toNanos();
            for (long left = end - System.nanoTime(); !stopping && left > 0; left = end - System.nanoTime()) {
                bell.wait(Math.max(1, left / 1_000_000));
            }
        }
    }

    /** Until each file of the first look is checked, or is seen to grow. */
    private void pass(Ledger ledger) throws IOException, InterruptedException {
        Set<String> names = new HashSet<>();
        look().forEach(found -> names.add(found.name()));
        for (boolean more = !names.isEmpty(); more; ) {
            List<WatchedFile> now = look();
            now.removeIf(found -> !names.contains(found.name()));
            if (!check(settled(now, ledger), ledger)) {
                return;
            }
            now.removeIf(
                    found -> known(found, ledger) || unwritten.contains(found.name()) || settling.grew(found.name()));
            more = !now.isEmpty();
            if (more) {
                pause();
            }
        }
        names.stream()
                .filter(settling::grew)
                .sorted()
                .forEach(name ->
                        err.println("bind-prep: " + Printable.of(name) + " is still growing: left for the next pass"));
    }

    private List<WatchedFile> look() {
        List<WatchedFile> found = new ArrayList<>();
        List<Path> all = new ArrayList<>();
        Path out = Files.exists(settings.out()) && !same(settings.out(), settings.folder()) ? settings.out() : null;
        for (InputFile input : FolderWalk.of(settings.folder(), out)) {
            all.add(input.file());
            UnreadableInputException problem = input.problem();
            if (problem != null) {
                if (refused.add(input.name())) {
                    err.println("bind-prep: " + Printable.of(problem.getMessage() + " " + problem.remedy()));
                    err.flush();
                    worst = Math.max(worst, ExitCode.UNREADABLE);
                }
                continue;
            }
            try {
                String name = InputFile.name(settings.folder().relativize(input.file()));
                found.add(new WatchedFile(input.file(), name, FileStamp.of(input.file())));
            } catch (IOException e) {
                continue; // gone again
            }
        }
        Set<String> names = new HashSet<>();
        found.forEach(one -> names.add(one.name()));
        settling.keepOnly(names);
        pdfs = List.copyOf(all);
        return found;
    }

    /** Files that nothing is written over: also those of the folder that are not checked now. */
    private Inputs inputs() {
        return Inputs.pdfs(pdfs).plus(read);
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException e) {
            return false;
        }
    }

    private boolean known(WatchedFile found, Ledger ledger) {
        Ledger.Entry last = ledger.last(found.name()).orElse(null);
        return last != null
                && last.settings().equals(digest)
                && last.stamp().equals(found.stamp())
                // leave to read it, given since, changes no stamp
                && !(last.sha256().equals(Ledger.UNCHECKED) && Files.isReadable(found.file()));
    }

    private List<WatchedFile> settled(List<WatchedFile> found, Ledger ledger) {
        List<WatchedFile> settled = new ArrayList<>();
        for (WatchedFile one : found) {
            if (!known(one, ledger) && settling.look(one.name(), one.file(), one.stamp())) {
                settled.add(one);
            }
        }
        return settled;
    }

    /** Checks what has settled; false where no more is wanted. */
    private boolean check(List<WatchedFile> settled, Ledger ledger) throws IOException, InterruptedException {
        List<WatchedFile> files = new ArrayList<>();
        List<String> digests = new ArrayList<>();
        for (WatchedFile one : settled) {
            String sha256 = sha256(one.file());
            Ledger.Entry last = ledger.last(one.name()).orElse(null);
            if (last != null
                    && last.settings().equals(digest)
                    && last.sha256().equals(sha256)
                    && !sha256.equals(Ledger.UNCHECKED)) {
                done(one, sha256, ledger); // put there again, the same
            } else {
                files.add(one);
                digests.add(sha256);
            }
        }
        WatchedReports reports = new WatchedReports(settings.out(), settings.reports(), files, inputs());
        FileCheck check = checker.of(reports);
        boolean[] more = {true};
        waiting = files.size();
        try {
            InOrder.run(
                    files.size(),
                    threads,
                    // work begun is finished, nothing more is begun
                    i -> Optional.of(i)
                            .filter(any -> !stopping)
                            .map(any -> check.answer(
                                    i,
                                    new InputFile(
                                            files.get(i).file(), files.get(i).name(), null),
                                    (done, total) -> {})),
                    new Predicate<>() {
                        private int next;

                        @Override
                        public boolean test(Optional<Answer> answer) {
                            int i = next++;
                            more[0] = answer.isPresent()
                                    && answered(files.get(i), digests.get(i), answer.get(), reports, ledger);
                            return more[0];
                        }
                    });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return more[0] && !stopping;
    }

    private boolean answered(WatchedFile found, String sha256, Answer answer, WatchedReports reports, Ledger ledger) {
        waiting--;
        if (!found.stamp().holds(found.file())) {
            return true; // it changed meanwhile: looked at again
        }
        try {
            if (answer.kind() == Answer.Kind.INTERNAL || answer.kind() == Answer.Kind.WRONG_SETTING) {
                reports.remove(found);
            }
            boolean more = listener.checked(answer);
            worst = Math.max(worst, answer.exit());
            full = answer.reports() == Answer.Reports.DISK_FULL;
            if (answer.reports() == Answer.Reports.WRITTEN) {
                done(found, sha256, ledger);
            } else {
                unwritten.add(found.name());
                settling.postpone(found.name(), found.stamp());
            }
            return more && !full;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void done(WatchedFile found, String sha256, Ledger ledger) throws IOException {
        ledger.add(found.name(), new Ledger.Entry(digest, sha256, found.stamp()));
        settling.done(found.name());
    }

    /** Of a file's bytes; {@link Ledger#UNCHECKED} where it cannot be read. */
    private static String sha256(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] buffer = new byte[64 * 1024];
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                digest.update(buffer, 0, read);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (IOException e) {
            return Ledger.UNCHECKED;
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has it", e);
        }
    }
}
