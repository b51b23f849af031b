package io.bindprep.cli.output;

import io.bindprep.check.Report;
import io.bindprep.cli.console.Problems;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The files that reports are written to; safe on several threads for different inputs. */
public interface ReportFiles {
    /** A report that could not be written, and why. */
    record Unwritten(Path file, IOException why) {
        /** Returns true if its disk has no room, so that no other report will find any there either. */
        boolean full() {
            try {
                Path folder = file.toAbsolutePath().getParent();
                return !(why instanceof FileSystemException)
                        && folder != null
                        && Files.getFileStore(folder).getUsableSpace() < ROOM;
            } catch (IOException e) {
                return false;
            }
        }
    }

    /** Bytes that a report hardly does without. */
    long ROOM = 64 * 1024;

    /** Returns true if one of them found no room on its disk. */
    static boolean full(List<Unwritten> unwritten) {
        return unwritten.stream().anyMatch(Unwritten::full);
    }

    /** The option that asks for them. */
    String option();

    /**
     * Writes every report of a document.
     *
     * @param input which one, from 0
     * @param took time of its check
     * @return for each that could not be written which it is and why
     */
    List<Unwritten> write(int input, CheckRequest request, Report report, Duration took)
            throws UnreadableInputException;

    /** Writes what there is to say of a document that could not be read; returns as {@link #write}. */
    List<Unwritten> unreadable(int input, String name, UnreadableInputException why);

    /** Notes that a document was not checked for another reason, in a sentence. */
    void unchecked(int input, String name, String why);

    /** Reports that could not be written in words, a line each, those of a full disk in one; empty where all are. */
    default String told(List<Unwritten> unwritten) {
        Map<Boolean, List<Unwritten>> byRoom = unwritten.stream().collect(Collectors.partitioningBy(Unwritten::full));
        List<Unwritten> full = byRoom.getOrDefault(true, List.of());
        StringBuilder lines = new StringBuilder();
        if (!full.isEmpty()) {
            String files = full.stream().map(u -> u.file().toString()).collect(Collectors.joining(", "));
            lines.append(Problems.cannotWrite(option(), files, full.get(0).why()))
                    .append('\n');
        }
        byRoom.getOrDefault(false, List.of())
                .forEach(u -> lines.append(
                                Problems.cannotWrite(option(), u.file().toString(), u.why()))
                        .append('\n'));
        return lines.toString();
    }
}
