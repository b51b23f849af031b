package io.bindprep.cli.watch;

import java.nio.file.Path;

/**
 * A file of a watched folder as it was seen.
 *
 * @param file where it is
 * @param name its path from the watched folder, with slashes on every system
 * @param stamp as it was
 */
record WatchedFile(Path file, String name, FileStamp stamp) {}
