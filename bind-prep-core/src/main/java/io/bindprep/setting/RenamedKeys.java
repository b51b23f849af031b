package io.bindprep.setting;

import java.util.Map;
import java.util.Optional;

/** Names that keys had in version 1 of the formats; none is read any more, but whoever writes one is told the new name. */
public final class RenamedKeys {
    private static final Map<String, String> NEW_BY_OLD = Map.of(
            "bound-edge", "binding-edge",
            "clear-margin", "binding-margin",
            "registration", "punching-tolerance",
            "least-web", "minimum-web",
            "turned", "rotated",
            "least-scale", "minimum-scale",
            "axis", "centre");

    private RenamedKeys() {}

    /** New name of a key; empty where its name never changed. */
    public static Optional<String> now(String old) {
        return Optional.ofNullable(NEW_BY_OLD.get(old));
    }

    /** "bound-edge is now binding-edge", for names that are written with a prefix too; empty where nothing changed. */
    public static Optional<String> sentence(String prefix, String old) {
        return now(old).map(key -> prefix + old + " is now " + prefix + key);
    }
}
