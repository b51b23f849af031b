package io.bindprep.maven;

import io.bindprep.files.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the files of a goal go, each whole or not at all. */
record OutputFolder(Path base, Path directory) {
    /** Where the file of a document with this ending belongs; its folder is there. */
    Path file(PdfInput document, String ending) throws IOException {
        Files.createDirectories(directory);
        return directory.resolve(document.report() + ending);
    }

    /** Writes one; a document is never overwritten. */
    Path write(PdfInput document, String ending, WholeFile.Content content) throws IOException {
        Path file = file(document, ending);
        WholeFile.write(file, content, document.file());
        return file;
    }

    /** Removes what an earlier build left. */
    void remove(PdfInput document, String ending) throws IOException {
        Files.deleteIfExists(directory.resolve(document.report() + ending));
    }

    /** A path for the log: within the project where it lies there. */
    String shown(Path file) {
        Path path = file.startsWith(base) ? base.relativize(file) : file;
        return path.toString().replace('\\', '/');
    }
}
