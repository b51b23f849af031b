package io.bindprep.cli.watch;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Tells whether a file ends as a PDF does: ISO 32000-1:2008, 7.5.5; readers look in the last 1,024 bytes. */
final class EofMarker {
    private static final int LAST_BYTES = 1_024;

    private EofMarker() {}

    static boolean of(Path path) {
        try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "r")) {
            long from = Math.max(0, file.length() - LAST_BYTES);
            byte[] end = new byte[(int) Math.min(LAST_BYTES, file.length() - from)];
            file.seek(from);
            file.readFully(end);
            return new String(end, StandardCharsets.ISO_8859_1).contains("%%EOF");
        } catch (IOException e) {
            return false; // its check will say why
        }
    }
}
