package io.bindprep.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a file of text that a person named, which may be any file. */
public final class TextFile {
    // four bytes for each of a million characters, the most that any of our readers takes
    private static final int MOST_BYTES = 4_000_000;

    private TextFile() {}

    /**
     * The whole text.
     *
     * @throws IOException where it cannot be read, is not text in UTF-8 ({@link java.nio.charset.CharacterCodingException}) or
     *     is larger than 4 MB
     */
    public static String read(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new FileSystemException(file.toString(), null, "it is a directory");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new FileSystemException(file.toString(), null, "it is larger than 4 MB");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        }
    }
}
