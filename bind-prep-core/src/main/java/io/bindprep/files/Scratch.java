package io.bindprep.files;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A working copy in the system's folder for temporary files, which no other user can read. It goes when it is closed, where a
 * signal ends the process before that, and else with the next run.
 */
public final class Scratch implements AutoCloseable {
    private static final Set<Path> LEFT = ConcurrentHashMap.newKeySet();

    static {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> LEFT.forEach(Leftovers::discard)));
    }

    private final Path path;

    private Scratch(Path path) {
        this.path = path;
        LEFT.add(path);
    }

    /** An empty file whose name ends in .pdf. */
    public static Scratch file() throws IOException {
        return kept(Files.createTempFile(Leftovers.prefix(), ".pdf"));
    }

    /** An empty folder; what is put into it goes with it. */
    public static Scratch folder() throws IOException {
        return kept(Files.createTempDirectory(Leftovers.prefix()));
    }

    /** Clears the folder of what killed runs left there, as working copies are as large as the documents. */
    private static Scratch kept(Path path) {
        Scratch made = new Scratch(path);
        Path folder = path.getParent();
        if (folder != null) {
            Leftovers.clear(folder, Leftovers.WORKING);
        }
        return made;
    }

    /** Place. */
    public Path path() {
        return path;
    }

    /**
     * Opens one of these files, or one in such a folder, to be written; what cannot be written says that it was the working
     * copy, not the result.
     */
    public static OutputStream write(Path file) throws IOException {
        return new Told(file, Files.newOutputStream(file));
    }

    @Override
    public void close() {
        Leftovers.discard(path);
        LEFT.remove(path);
    }

    private static final class Told extends FilterOutputStream {
        private final Path file;

        Told(Path file, OutputStream out) {
            super(out);
            this.file = file;
        }

        @Override
        public void write(int octet) throws IOException {
            write(new byte[] {(byte) octet}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            try {
                out.write(bytes, from, length);
            } catch (IOException e) {
                throw new FileSystemException(
                        file.toString(),
                        null,
                        "there is no room for a working copy in " + file.getParent() + " (" + e.getMessage()
                                + "); make room there");
            }
        }
    }
}
