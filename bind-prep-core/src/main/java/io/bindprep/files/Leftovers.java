package io.bindprep.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Unfinished files of runs that were killed; each name says which process made it, by its number and when it began. */
final class Leftovers {
    /** Names of files in the folder of the result; no file of the user's is called so. */
    static final Pattern UNFINISHED = Pattern.compile("\\.bind-prep-(\\d{1,18})-(0|\\d{12,14})-\\d+\\.tmp");
    /** Names in the system's folder for working copies. */
    static final Pattern WORKING = Pattern.compile("bind-prep-(\\d{1,18})-(0|\\d{12,14})-\\d+(\\.pdf)?");

    /** Folders that this process has cleared. */
    private static final Set<Path> CLEARED = ConcurrentHashMap.newKeySet();

    private Leftovers() {}

    /** Beginning of the name of a file that this process makes. */
    static String prefix() {
        ProcessHandle own = ProcessHandle.current();
        return "bind-prep-" + own.pid() + "-" + begun(own) + "-";
    }

    /** Time at which a process began, in milliseconds; 0 where the system does not tell. */
    private static long begun(ProcessHandle process) {
        return process.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
    }

    /** Removes from a folder what no living process owns, once for each folder. Whatever cannot be removed stays. */
    static void clear(Path folder, Pattern names) {
        if (!CLEARED.add(folder.toAbsolutePath().resolve(names == WORKING ? "working" : "unfinished"))) {
            return;
        }
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> isLeft(file, names)).forEach(Leftovers::discard);
        } catch (IOException | RuntimeException e) {
            return; // a folder that cannot be listed may be written to all the same
        }
    }

    private static boolean isLeft(Path file, Pattern names) {
        Matcher name = names.matcher(String.valueOf(file.getFileName()));
        if (!name.matches() || Files.isSymbolicLink(file)) {
            return false;
        }
        Optional<ProcessHandle> maker = ProcessHandle.of(Long.parseLong(name.group(1)));
        boolean lives =
                maker.isPresent() && maker.get().isAlive() && begun(maker.get()) == Long.parseLong(name.group(2));
        return !lives && (Files.isDirectory(file) || isFree(file));
    }

    /** Returns true if nobody holds a file: in a shared folder its maker may live on another machine. */
    private static boolean isFree(Path file) {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock != null;
        } catch (IOException | OverlappingFileLockException e) {
            return false;
        }
    }

    /** Removes a file, or a folder with all in it; what cannot be removed stays. */
    static void discard(Path path) {
        try (Stream<Path> files = Files.walk(path)) {
            List<Path> inmostFirst = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : inmostFirst) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            return;
        }
    }
}
