package io.bindprep.job;

import io.bindprep.setting.KeyDescription;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Value of one key of a job, and its origin.
 *
 * @param key the job key, dotted where its parts come from different places
 * @param value as it was given, nested values in YAML's flow form; null where nothing is said and no one value stands for it
 * @param otherwise what holds where there is no value, a few words; "" where there is one
 * @param from who said so
 * @param place where in the job file it stands, "bind-prep.yaml, line 3, column 8"; null for the others
 */
public record JobOrigin(
        String key,
        @Nullable String value,
        String otherwise,
        From from,
        @Nullable String place) {
    /** Places that a value may come from, the first that says it. */
    public enum From {
        /** The front end, over the job file. */
        OPTION,
        /** The job file. */
        JOB_FILE,
        /** Nobody, so that the built-in value holds. */
        BUILT_IN
    }

    /** Every key of a job with these settings, in the order of the job file; keys that there are not are left out. */
    static List<JobOrigin> of(JobSettings settings) {
        List<JobOrigin> rows = new ArrayList<>();
        for (KeyDescription row : JobKeyDescriptions.ALL) {
            Object value = settings.value(row.key()).orElse(null);
            if (value == null) {
                String otherwise = row.builtIn() == null ? row.otherwise() : "";
                rows.add(new JobOrigin(row.key(), row.builtIn(), otherwise, From.BUILT_IN, null));
            } else if (row.key().equals(JobKeys.COVERS) && value instanceof Map<?, ?> parts) {
                // the one setting whose parts are laid over each other
                parts.forEach((part, cover) -> rows.add(given(settings, row.key() + "." + part, cover)));
            } else {
                rows.add(given(settings, row.key(), value));
            }
        }
        return rows;
    }

    private static JobOrigin given(JobSettings settings, String key, Object value) {
        String place = settings.place(key).orElse(null);
        return new JobOrigin(key, text(value), "", place == null ? From.OPTION : From.JOB_FILE, place);
    }

    private static String text(Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream()
                    .map(e -> e.getKey() + ": " + text(e.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof Iterable<?> items) {
            List<String> texts = new ArrayList<>();
            items.forEach(item -> texts.add(text(item)));
            return "[" + String.join(", ", texts) + "]";
        }
        return String.valueOf(value);
    }
}
