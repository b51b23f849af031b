package io.bindprep.maven;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

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
        Path unfinished = Files.createTempFile(directory, "unfinished", ".tmp");
        try {
            Files.writeString(unfinished, content, StandardCharsets.UTF_8);
            return Files.move(unfinished, directory.resolve(name), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }
}
