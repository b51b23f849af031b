package io.bindprep.cli.watch;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** Tells by looking again and again which files have stopped growing. */
final class Settling {
    /** A file that ends as a PDF does may be copied whole after two equal looks. */
    private static final int LOOKS = 2;

    /** One that does not, or is empty, may still be on its way; after so many it is taken as it is. */
    private static final int LOOKS_WITHOUT_END = 10;

    /** Looks to pass before a file is tried again whose reports could not be written. */
    private static final int PAUSE = 30;

    private record Seen(FileStamp stamp, int looks, boolean grew) {}

    private final Map<String, Seen> seen = new HashMap<>();

    /** Looks at a file; whether it has settled. */
    boolean look(String name, Path file, FileStamp now) {
        Seen before = seen.get(name);
        int looks = 1;
        boolean grew = false;
        if (before != null) {
            boolean same = before.stamp().equals(now);
            looks = same ? before.looks() + 1 : 1;
            grew = before.grew() || !same;
        }
        seen.put(name, new Seen(now, looks, grew));
        return looks >= LOOKS_WITHOUT_END || looks >= LOOKS && EofMarker.of(file);
    }

    /** Returns true if a file changed between two looks. */
    boolean grew(String name) {
        Seen one = seen.get(name);
        return one != null && one.grew();
    }

    /** Has a file tried again later. */
    void postpone(String name, FileStamp stamp) {
        seen.put(name, new Seen(stamp, LOOKS_WITHOUT_END - PAUSE, false));
    }

    /** Forgets a file that is done. */
    void done(String name) {
        seen.remove(name);
    }

    /** Forgets all files but these. */
    void keepOnly(Set<String> names) {
        seen.keySet().retainAll(names);
    }
}
