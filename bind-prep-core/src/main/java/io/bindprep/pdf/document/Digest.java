package io.bindprep.pdf.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** The SHA-256 of a file, worked out on a thread beside the rest: it takes longer than finding the pages. */
public final class Digest {
    private final FutureTask<String> work;
    private final boolean shared;

    private Digest(FutureTask<String> work, boolean shared) {
        this.work = work;
        this.shared = shared;
    }

    public static Digest begin(Path file) {
        FutureTask<String> work = new FutureTask<>(() -> sha256(file));
        Thread beside = new Thread(work, "bind-prep digest");
        beside.setDaemon(true);
        beside.start();
        return new Digest(work, false);
    }

    /** One that is known already, or that nobody asks for. */
    public static Digest of(String known) {
        FutureTask<String> work = new FutureTask<>(() -> known);
        work.run();
        return new Digest(work, true);
    }

    /** The same for another opening of the file, which leaves it to this one. */
    public Digest shared() {
        return new Digest(work, true);
    }

    /** The digest in hexadecimal, once it is there. */
    public String await() throws IOException {
        try {
            return work.get();
        } catch (ExecutionException e) {
            throw e.getCause() instanceof IOException refused ? refused : new IOException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }

    /** Nobody will ask for it; a shared one goes on. */
    public void cancel() {
        if (!shared) {
            work.cancel(true);
        }
    }

    private static String sha256(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] buffer = new byte[1 << 16];
            for (int n = in.read(buffer); n > 0 && !Thread.interrupted(); n = in.read(buffer)) {
                digest.update(buffer, 0, n);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
