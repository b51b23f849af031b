package io.bindprep.files;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A document to open.
 *
 * @param name how messages call it
 * @param password for an encrypted PDF; null for none
 */
public record PdfSource(Path file, String name, @Nullable String password) {
    @Override
    public String toString() {
        return "PdfSource[" + name + "]"; // never the password
    }
}
