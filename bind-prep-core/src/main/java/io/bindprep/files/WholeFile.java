package io.bindprep.files;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Writes a file whole or not at all: into an unfinished one in the same folder, which then takes the name in one step.
 *
 * <p>Whatever fails or ends the process (a full disk, Ctrl-C, an error while the content is made), the file that
 * was there before stays as it was, and the unfinished one is removed, by the
 * next run where the process was killed. A symbolic link is followed and stays a link, an
 * existing file keeps its permissions, a device or pipe is written straight. Folders are not made. Safe for several
 * threads and processes; the last one to finish wins.
 */
public final class WholeFile {
    /** As many links in a row as Linux follows. */
    private static final int MOST_LINKS = 40;

    private static final AtomicInteger NUMBER = new AtomicInteger();
    private static final Set<Path> UNFINISHED = ConcurrentHashMap.newKeySet();

    static {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> UNFINISHED.forEach(WholeFile::discard)));
    }

    /** Makes what the file will hold. */
    @FunctionalInterface
    public interface Content {
        /**
         * Writes all of it; the stream is buffered and need not be closed.
         *
         * @param out where to
         * @throws IOException where it cannot be written; then there is no file
         */
        void writeTo(OutputStream out) throws IOException;
    }

    private WholeFile() {}

    /**
     * Writes text in UTF-8; see {@link #write(Path, Content, Inputs)}.
     *
     * @param target the file to write
     * @param text all of it
     * @param inputs files that are not overwritten
     * @throws IOException where it cannot be written, with the path and the reason in its message
     */
    public static void write(Path target, String text, Inputs inputs) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        write(target, out -> out.write(bytes), inputs);
    }

    /**
     * Writes a file, over an older one if there is one.
     *
     * @param target the file to write; its folder must exist
     * @param content makes what goes into it
     * @param inputs files that are not overwritten, by whatever name or link the target reaches them
     * @throws IOException where it cannot be written, with the path and the reason in its message
     */
    public static void write(Path target, Content content, Inputs inputs) throws IOException {
        Path file = followed(target);
        refuse(target, file, inputs);
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            fill(file, content, StandardOpenOption.WRITE);
            return;
        }
        Path unfinished = file.resolveSibling("." + Leftovers.prefix() + NUMBER.incrementAndGet() + ".tmp");
        UNFINISHED.add(unfinished);
        clear(file);
        try {
            fill(unfinished, content, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
            keepPermissions(file, unfinished);
            Files.move(unfinished, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            discard(unfinished);
            UNFINISHED.remove(unfinished);
        }
    }

    /**
     * Fails as {@link #write(Path, Content, Inputs)} would, before there is anything to write.
     *
     * @param target the file to be written
     * @param inputs files that are not overwritten
     * @throws IOException where it cannot be written, with the path and the reason in its message
     */
    public static void check(Path target, Inputs inputs) throws IOException {
        refuse(target, followed(target), inputs);
    }

    private static Path followed(Path target) throws IOException {
        Path file = target.toAbsolutePath();
        for (int links = 0; Files.isSymbolicLink(file); links++) {
            if (links == MOST_LINKS) {
                throw new FileSystemLoopException(target.toString());
            }
            file = file.resolveSibling(Files.readSymbolicLink(file));
        }
        return file;
    }

    private static void refuse(Path target, Path file, Inputs inputs) throws IOException {
        Path folder = file.getParent();
        if (folder == null || Files.isDirectory(file)) {
            throw new FileSystemException(target.toString(), null, "this is a folder, not a file");
        }
        if (!Files.isDirectory(folder)) {
            throw new NoSuchFileException(target.toString(), null, "there is no folder " + target.getParent());
        }
        if (!Files.exists(file)) {
            return;
        }
        inputs.refuse(target);
        // Renaming asks only the folder, so a write-protected file would be lost.
        if (!Files.isWritable(file)) {
            throw new AccessDeniedException(target.toString(), null, "the file is write-protected");
        }
    }

    private static void fill(Path file, Content content, StandardOpenOption... how) throws IOException {
        try (FileChannel channel = FileChannel.open(file, how);
                OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel))) {
            hold(channel);
            content.writeTo(out);
        }
    }

    /** Tells other machines that share the folder that the file is being written; it ends with the channel. */
    private static void hold(FileChannel channel) {
        try {
            channel.tryLock();
        } catch (IOException | RuntimeException e) {
            return; // devices, pipes and some file systems know no locks
        }
    }

    private static void clear(Path file) {
        Path folder = file.getParent();
        if (folder != null) {
            Leftovers.clear(folder, Leftovers.UNFINISHED);
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        if (old != null && Files.exists(from)) {
            Files.setPosixFilePermissions(to, old.readAttributes().permissions());
        }
    }

    /** The reason why there is no whole file matters more than one why an unfinished one stays. */
    private static void discard(Path unfinished) {
        try {
            Files.deleteIfExists(unfinished);
        } catch (IOException e) {
            return;
        }
    }
}
