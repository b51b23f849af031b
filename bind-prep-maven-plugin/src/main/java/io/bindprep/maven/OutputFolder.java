package io.bindprep.maven;

import io.bindprep.files.Inputs;
import io.bindprep.files.WholeFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Folder for the files of a goal, each whole or not at all.
 *
 * @param inputs files that the goal reads and so never writes over or removes
 */
record OutputFolder(Path base, Path directory, Inputs inputs) {
    /** The same folder, which spares more files. */
    OutputFolder sparing(Inputs more) {
        return new OutputFolder(base, directory, inputs.plus(more));
    }

    /** Place of the file of a document with this ending; its folder is there. */
    Path file(PdfInput document, String ending) throws IOException {
        Files.createDirectories(directory);
        return directory.resolve(document.report() + ending);
    }

    /** Writes one; no input is overwritten. */
    Path write(PdfInput document, String ending, WholeFile.Content content) throws IOException {
        Path file = file(document, ending);
        WholeFile.write(file, content, inputs);
        return file;
    }

    /** Writes the file of this name on all documents; no input is overwritten. */
    void write(String name, String text) throws IOException {
        Files.createDirectories(directory);
        WholeFile.write(directory.resolve(name), text, inputs);
    }

    /** Removes what an earlier build left. */
    void remove(PdfInput document, String ending) throws IOException {
        Path old = directory.resolve(document.report() + ending);
        if (!inputs.has(old)) {
            Files.deleteIfExists(old);
        }
    }

    /** A path for the log: within the project where it lies there. */
    String shown(Path file) {
        Path path = file.startsWith(base) ? base.relativize(file) : file;
        return path.toString().replace('\\', '/');
    }
}
