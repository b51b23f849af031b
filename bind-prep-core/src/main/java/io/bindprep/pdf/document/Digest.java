package io.bindprep.pdf.document;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** The SHA-256 of a file, worked out on a thread beside the parser: it takes as long as finding the pages. */
public final class Digest {
    private final FutureTask<String> work;

    private Digest(Callable<String> work) {
        this.work = new FutureTask<>(work);
    }

    public static Digest begin(Path file) {
        Digest digest = new Digest(() -> sha256(file));
        Thread beside = new Thread(digest.work, "bind-prep digest");
        beside.setDaemon(true);
        beside.start();
        return digest;
    }

    /** One that is known already. */
    public static Digest of(String known) {
        Digest digest = new Digest(() -> known);
        digest.work.run();
        return digest;
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

    /** Nobody will ask for it. */
    public void cancel() {
        work.cancel(true);
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
