package io.bindprep.pdf.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import org.jspecify.annotations.Nullable;

/** By what the system tells one state of a file from another. */
public record FileIdentity(
        long size, FileTime modified, @Nullable Object key) {
    public static FileIdentity of(Path file) throws IOException {
        BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
        return new FileIdentity(found.size(), found.lastModifiedTime(), found.fileKey());
    }
}
