package io.bindprep.cli.input;

import io.bindprep.files.Scratch;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Files that a command line names: folders looked through, standard input taken. */
public final class InputFiles implements AutoCloseable {
    private final List<InputFile> files;
    private final boolean several;
    private final @Nullable Scratch spooled;

    private InputFiles(List<InputFile> files, boolean several, @Nullable Scratch spooled) {
        this.files = List.copyOf(files);
        this.several = several;
        this.spooled = spooled;
    }

    /**
     * Finds them, in the order that they are named.
     *
     * @param in standard input
     * @throws IllegalArgumentException where that cannot be done; the message says why
     */
    public static InputFiles of(List<Path> named, InputStream in) {
        List<InputFile> files = new ArrayList<>();
        boolean folder = false;
        Scratch spooled = null;
        for (Path path : named) {
            if (path.equals(StandardInput.DASH)) {
                if (spooled != null) {
                    throw new IllegalArgumentException("- (standard input) is named twice");
                }
                spooled = spooled(in);
                files.add(new InputFile(spooled.path(), StandardInput.NAME, null));
            } else if (Files.isDirectory(path)) {
                folder = true;
                List<InputFile> within = FolderWalk.of(path, null);
                files.addAll(within.isEmpty() ? List.of(empty(path)) : within);
            } else {
                files.add(InputFile.of(path));
            }
        }
        return new InputFiles(files, folder || files.size() > 1, spooled);
    }

    private static Scratch spooled(InputStream in) {
        try {
            return StandardInput.spooled(in);
        } catch (IOException e) {
            throw new IllegalArgumentException("- (standard input): it cannot be kept: " + e.getMessage(), e);
        }
    }

    private static InputFile empty(Path folder) {
        String name = InputFile.name(folder);
        return new InputFile(
                folder,
                name,
                new UnreadableInputException(
                        Reason.MISSING,
                        "There is no PDF in the folder " + name + " or below it.",
                        "Name the folder that holds the files; their names end in .pdf."));
    }

    public List<InputFile> files() {
        return files;
    }

    /** Returns true if the answer is to be read as one of several, even if it is the only one. */
    public boolean several() {
        return several;
    }

    @Override
    public void close() {
        if (spooled != null) {
            spooled.close();
        }
    }
}
