package io.bindprep.cli.watch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.concurrent.TimeUnit;

/**
 * Stamp that tells a changed file without reading it.
 *
 * @param size bytes
 * @param modifiedNanos since 1970, as exact as the file system keeps it; whoever copies a file may set it
 * @param changedNanos likewise, when the system itself last saw bytes, name or permissions change; 0 where it keeps no such
 *     time
 */
record FileStamp(long size, long modifiedNanos, long changedNanos) {
    /** Of a file as it is now; fails where it is gone. */
    static FileStamp of(Path file) throws IOException {
        BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
        FileTime changed = file.getFileSystem().supportedFileAttributeViews().contains("unix")
                ? (FileTime) Files.getAttribute(file, "unix:ctime")
                : FileTime.fromMillis(0);
        return new FileStamp(now.size(), nanos(now.lastModifiedTime()), nanos(changed));
    }

    private static long nanos(FileTime time) {
        return time.to(TimeUnit.NANOSECONDS);
    }

    /** Returns true if a file still has this stamp; not where it is gone. */
    boolean holds(Path file) {
        try {
            return of(file).equals(this);
        } catch (IOException e) {
            return false;
        }
    }
}
