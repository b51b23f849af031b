package io.bindprep.job;

import io.bindprep.problem.SettingException;
import io.bindprep.setting.SettingFile;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Raw settings by job key, not yet judged: text, numbers, booleans, lists and maps, nested as the job file nests them.
 *
 * <p>Immutable. Each front end lays its own over those of the job file with {@link #over}; {@link JobReader} fills in the
 * built-in values. Serializable, so that a job may be sent to where a document lies; {@link JobReader} makes it there.
 */
public final class JobSettings implements Serializable {
    private static final long serialVersionUID = 1L;

    private static final JobSettings EMPTY = new JobSettings(Map.of(), Map.of());

    // "covers" is the one setting made of two that are given apart; a stock, say, is replaced whole
    private static final String MERGED = JobKeys.COVERS;

    private final Map<String, Object> values;
    private final Map<String, String> places;

    JobSettings(Map<String, Object> values, Map<String, String> places) {
        this.values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        this.places = Map.copyOf(places);
    }

    /** No setting at all. */
    public static JobSettings empty() {
        return EMPTY;
    }

    /**
     * Settings by (dotted) key; a null value counts as not given.
     *
     * @param settings values that are text, numbers, booleans, lists or maps; anything else is taken by its text
     */
    public static JobSettings of(Map<String, ?> settings) {
        JobSettings made = EMPTY;
        for (Map.Entry<String, ?> e : settings.entrySet()) {
            if (e.getValue() != null) {
                made = made.with(e.getKey(), e.getValue());
            }
        }
        return made;
    }

    /**
     * Reads a job file: JSON where its name ends in {@code .json}, else YAML 1.2.
     *
     * @param text what the file says, at most a million characters
     * @param name how errors call the file
     * @throws SettingException where it cannot be read as one map of settings, with line and column
     */
    public static JobSettings read(String text, String name) throws SettingException {
        SettingFile file = SettingFile.read("job", text, name);
        return new JobSettings(file.values(), file.places());
    }

    /** These settings and one more, which replaces what stood there; {@code covers.front} sets one part of a setting. */
    public JobSettings with(String dottedKey, Object value) {
        Object nested = freeze(value);
        int dot = dottedKey.lastIndexOf('.');
        String key = dottedKey;
        while (dot >= 0) {
            nested = Map.of(key.substring(dot + 1), nested);
            key = key.substring(0, dot);
            dot = key.lastIndexOf('.');
        }
        return new JobSettings(Map.of(key, nested), Map.of()).over(this);
    }

    /** These settings where they say something, else the lower ones. */
    public JobSettings over(JobSettings lower) {
        Map<String, Object> merged = new LinkedHashMap<>(lower.values);
        Map<String, String> known = new LinkedHashMap<>(lower.places);
        for (Map.Entry<String, Object> e : values.entrySet()) {
            String key = e.getKey();
            Object below = lower.values.get(key);
            Map<String, Object> upperParts = parts(key, e.getValue());
            Map<String, Object> lowerParts = parts(key, below);
            if (upperParts != null && lowerParts != null) {
                Map<String, Object> both = new LinkedHashMap<>(lowerParts);
                both.putAll(upperParts);
                merged.put(key, Collections.unmodifiableMap(both));
                // from here on each part has its own place, as the whole has none
                lowerParts
                        .keySet()
                        .forEach(part ->
                                lower.place(key + "." + part).ifPresent(at -> known.putIfAbsent(key + "." + part, at)));
                known.remove(key);
                upperParts.keySet().forEach(part -> forget(known, key + "." + part));
            } else {
                merged.put(key, e.getValue());
                forget(known, key);
            }
        }
        known.putAll(places);
        return new JobSettings(merged, known);
    }

    /** Value of a key of the first level; empty where nothing does. */
    public Optional<Object> value(String key) {
        return Optional.ofNullable(values.get(key));
    }

    /** The keys of the first level that are set. */
    public List<String> keys() {
        return List.copyOf(values.keySet());
    }

    /** Place where a setting was read ("bind-prep.yaml, line 3, column 8"); empty where it came from no file. */
    public Optional<String> place(String key) {
        return new SettingFile(Map.of(), places).place(key);
    }

    private static void forget(Map<String, String> places, String key) {
        places.keySet().removeIf(k -> k.equals(key) || k.startsWith(key + ".") || k.startsWith(key + "["));
    }

    private static @Nullable Map<String, Object> parts(String key, @Nullable Object value) {
        if (!key.equals(MERGED) || value == null) {
            return null;
        }
        return CoverReader.parts(value);
    }

    private static Object freeze(Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> copy = new LinkedHashMap<>();
            map.forEach((k, v) -> {
                if (v != null) {
                    copy.put(String.valueOf(k), freeze(v));
                }
            });
            return Collections.unmodifiableMap(copy);
        }
        if (value instanceof Iterable<?> items) {
            List<Object> copy = new ArrayList<>();
            items.forEach(item -> copy.add(freeze(Objects.requireNonNullElse(item, ""))));
            return Collections.unmodifiableList(copy);
        }
        return value instanceof Number || value instanceof Boolean ? value : String.valueOf(value);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof JobSettings s && values.equals(s.values);
    }

    @Override
    public int hashCode() {
        return values.hashCode();
    }

    @Override
    public String toString() {
        return "JobSettings" + values;
    }
}
