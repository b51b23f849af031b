package io.bindprep.cli.input;

import io.bindprep.files.Scratch;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Path;

/** The document that comes in by standard input, kept in a file that only its owner can read until the run ends. */
public final class StandardInput {
    /** Value on the command line. */
    public static final Path DASH = Path.of("-");

    /** The file that a shell put there, where the system names it. */
    public static final Path DEVICE = Path.of("/dev/stdin");

    /** Name in reports. */
    public static final String NAME = "stdin.pdf";

    // far above any book: the largest of the 14 that were measured has 75 MB
    private static final long MOST_BYTES = 4L * 1024 * 1024 * 1024;

    private StandardInput() {}

    /**
     * Takes the whole of it.
     *
     * @throws IOException where there is no room for it, or more than 4 GB of it
     */
    public static Scratch spooled(InputStream in) throws IOException {
        return spooled(in, MOST_BYTES);
    }

    public static Scratch spooled(InputStream in, long most) throws IOException {
        Scratch file = Scratch.file();
        try (OutputStream out = Scratch.write(file.path())) {
            byte[] buffer = new byte[64 * 1024];
            long taken = 0;
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                taken += read;
                if (taken > most) {
                    throw new FileSystemException("standard input", null, "holds more than " + most + " bytes");
                }
                out.write(buffer, 0, read);
            }
        } catch (IOException e) {
            file.close();
            throw e;
        }
        return file;
    }
}
