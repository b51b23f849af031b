package io.bindprep.setting;

import io.bindprep.problem.SettingException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A file of settings as it was read, not yet judged.
 *
 * @param values text, numbers, booleans, lists and maps by key of the first level, nested as the file nests them
 * @param places where each setting stands ("bind-prep.yaml, line 3, column 8"), by dotted key
 */
public record SettingFile(Map<String, Object> values, Map<String, String> places) {
    public SettingFile {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        places = Map.copyOf(places);
    }

    /**
     * Reads a file: JSON where its name ends in {@code .json}, else YAML 1.2.
     *
     * @param key the setting that names the file, for the message; it is called "the KEY file" there
     * @param text what the file says, at most a million characters
     * @param name how errors call the file
     * @throws SettingException where it cannot be read as one map of settings, with line and column
     */
    public static SettingFile read(String key, String text, String name) throws SettingException {
        return SettingText.read(key, text, name);
    }

    /** Place of a setting or of the nearest one that holds it; empty where neither does. */
    public Optional<String> place(String key) {
        String at = key;
        while (true) {
            String place = places.get(at);
            if (place != null) {
                return Optional.of(place);
            }
            int cut = Math.max(at.lastIndexOf('.'), at.lastIndexOf('['));
            if (cut < 0) {
                return Optional.empty();
            }
            at = at.substring(0, cut);
        }
    }
}
