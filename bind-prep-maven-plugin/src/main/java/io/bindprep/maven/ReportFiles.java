package io.bindprep.maven;

import io.bindprep.files.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reports on disk: each is there whole or not at all. */
final class ReportFiles {
    private final Path directory;

    ReportFiles(Path directory) {
        this.directory = directory;
    }

    /** Writes both forms; returns the one for people. */
    Path write(PdfInput document, String json, String text) throws IOException {
        write(document.report() + ".json", json);
        return write(document.report() + ".txt", text);
    }

    private Path write(String name, String content) throws IOException {
        Files.createDirectories(directory);
        Path file = directory.resolve(name);
        WholeFile.write(file, content);
        return file;
    }
}
