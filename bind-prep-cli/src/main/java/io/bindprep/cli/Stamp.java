package io.bindprep.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.concurrent.TimeUnit;

/**
 * What tells that a file has changed without reading it.
 *
 * @param size bytes
 * @param modifiedNanos since 1970, as exact as the file system keeps it
 */
record Stamp(long size, long modifiedNanos) {
    /** Of a file as it is now; fails where it is gone. */
    static Stamp of(Path file) throws IOException {
        BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
        return new Stamp(now.size(), now.lastModifiedTime().to(TimeUnit.NANOSECONDS));
    }

    /** Whether a file still has this stamp; not where it is gone. */
    boolean holds(Path file) {
        try {
            return of(file).equals(this);
        } catch (IOException e) {
            return false;
        }
    }
}
