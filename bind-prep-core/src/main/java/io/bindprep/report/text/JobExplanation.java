package io.bindprep.report.text;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.job.JobOrigin;
import io.bindprep.report.json.Json;
import io.bindprep.report.json.JsonReport;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Writes where each setting of a job comes from. */
public final class JobExplanation {
    private static final int MOST_WIDTH = 36;

    private JobExplanation() {}

    /** A job's settings, as JSON. */
    record JsonJobOrigins(
            @JsonPropertyDescription("version of this format: names never change their meaning, new ones may come")
            int schemaVersion,

            @JsonPropertyDescription("in the order of the job file")
            List<JsonOrigin> job) {}

    /** One setting, as JSON. */
    record JsonOrigin(
            @JsonPropertyDescription("the job key, dotted where its parts come from different places")
            String key,

            @JsonPropertyDescription("as given; null where nothing is said and no one value stands for it") @Nullable
            String value,

            @JsonPropertyDescription("what holds where there is no value; null where there is one") @Nullable
            String otherwise,

            @JsonPropertyDescription("who says so") JobOrigin.From from,

            @JsonPropertyDescription("where in the job file; null for the others") @Nullable
            String place) {}

    /** Indented JSON that ends in a line feed. */
    public static String json(List<JobOrigin> rows) {
        return Json.text(new JsonJobOrigins(
                JsonReport.SCHEMA_VERSION,
                rows.stream()
                        .map(r -> new JsonOrigin(
                                r.key(),
                                r.value(),
                                r.otherwise().isEmpty() ? null : r.otherwise(),
                                r.from(),
                                r.place()))
                        .toList()));
    }

    /**
     * One line for each, in columns: key, value, who said so. Ends in a line feed.
     *
     * @param optionPrefix what the front end writes before a key that it was given, "--"
     */
    public static String text(List<JobOrigin> rows, String optionPrefix) {
        int keys = rows.stream().mapToInt(r -> r.key().length()).max().orElse(0);
        int values = rows.stream()
                .mapToInt(r -> shown(r).length())
                .filter(w -> w <= MOST_WIDTH)
                .max()
                .orElse(0);
        StringBuilder text = new StringBuilder();
        for (JobOrigin row : rows) {
            String from = switch (row.from()) {
                case OPTION -> "option " + optionPrefix + row.key().replaceAll("\\..*", "");
                case JOB_FILE -> Objects.requireNonNull(row.place());
                case BUILT_IN -> "built in";
            };
            String line = padded(row.key(), keys) + "  " + padded(shown(row), values) + "  " + from;
            text.append(Lines.shown(line)).append('\n');
        }
        return text.toString();
    }

    private static String shown(JobOrigin row) {
        String value = row.value();
        return value == null ? "(" + row.otherwise() + ")" : value;
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
