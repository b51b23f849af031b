package io.bindprep.cli.input;

import io.bindprep.problem.UnreadableInputException;
import io.bindprep.problem.UnreadableInputException.Reason;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The PDF files below a folder: names that end in .pdf, in any case, in the order of their paths. Links are followed, each
 * folder is looked into once however many lead to it; what is hidden (its name starts with a point) is passed over.
 */
public final class FolderWalk {
    private static final int DEEPEST = 100;
    private static final int MOST_ENTRIES = 1_000_000;

    private final List<InputFile> found = new ArrayList<>();
    private final Set<Path> seen = new HashSet<>();
    private final Path top;
    private final @Nullable Path except;
    private int entries;

    private FolderWalk(Path top, @Nullable Path except) {
        this.top = top;
        this.except = except;
    }

    /**
     * Looks through a folder.
     *
     * @param except a folder in it that is left out; null for none
     * @return the files; a folder that does not open stands among them, with its problem
     * @throws IllegalArgumentException where it holds too much to be meant; the message says so
     */
    public static List<InputFile> of(Path top, @Nullable Path except) {
        FolderWalk walk = new FolderWalk(top, except == null ? null : real(except));
        walk.folder(top, 0);
        return walk.found;
    }

    private void folder(Path folder, int depth) {
        Path real = real(folder);
        if (real.equals(except) || !seen.add(real)) {
            return;
        }
        if (depth > DEEPEST) {
            throw new IllegalArgumentException(top + ": folders lie more than " + DEEPEST + " deep in it");
        }
        List<Path> within = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
            for (Path entry : stream) {
                if (++entries > MOST_ENTRIES) {
                    throw new IllegalArgumentException(
                            top + ": holds more than " + MOST_ENTRIES + " files; name smaller folders");
                }
                within.add(entry);
            }
        } catch (IOException | DirectoryIteratorException e) {
            found.add(unopened(folder));
            return;
        }
        within.sort(Comparator.comparing(path -> String.valueOf(path.getFileName())));
        for (Path entry : within) {
            String name = String.valueOf(entry.getFileName());
            if (name.startsWith(".")) {
                continue;
            }
            if (Files.isDirectory(entry)) {
                folder(entry, depth + 1);
            } else if (name.toLowerCase(Locale.ROOT).endsWith(".pdf")) {
                found.add(InputFile.of(entry));
            }
        }
    }

    private static InputFile unopened(Path folder) {
        String name = InputFile.name(folder);
        return new InputFile(
                folder,
                name,
                new UnreadableInputException(
                        Reason.REFUSED,
                        "The folder " + name + " cannot be looked into: the system refused it.",
                        "Check that you may read it; nothing in it was checked."));
    }

    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            return path.toAbsolutePath().normalize();
        }
    }
}
