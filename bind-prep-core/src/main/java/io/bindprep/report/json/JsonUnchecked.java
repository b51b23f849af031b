package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.problem.SettingException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A file that was not checked, though nothing is known to be wrong with it, as JSON. */
record JsonUnchecked(
        @JsonPropertyDescription("version of this format: names never change their meaning, new ones may come")
        int schemaVersion,

        @JsonPropertyDescription(
                "whether the job asks for what there is not, or we made a mistake; nothing is known of it")
        UncheckedOutcome outcome,

        @JsonPropertyDescription("whether the job fails: always")
        boolean failed,

        @JsonPropertyDescription("the file that was to be checked")
        JsonUnreadable.Input input,

        @JsonPropertyDescription("why it was not") Problem problem) {

    /** Reasons in a word. */
    enum UncheckedOutcome {
        WRONG_SETTING,
        INTERNAL_ERROR
    }

    /** Reasons in detail. */
    record Problem(
            @JsonPropertyDescription("the job key, dotted where nested; null where no setting is wrong") @Nullable
            String key,

            @JsonPropertyDescription("what was given; null where no setting is wrong") @Nullable
            String value,

            @JsonPropertyDescription("in a sentence, for people")
            String message,

            @JsonPropertyDescription("what to do") String remedy,

            @JsonPropertyDescription("what would do; empty where it cannot be listed")
            List<String> known) {}

    static JsonUnchecked of(String file, SettingException e) {
        return of(
                file,
                UncheckedOutcome.WRONG_SETTING,
                new Problem(e.key(), e.value(), String.valueOf(e.getMessage()), e.remedy(), e.known()));
    }

    static JsonUnchecked internal(String file, String message) {
        return of(
                file,
                UncheckedOutcome.INTERNAL_ERROR,
                new Problem(null, null, message, "Report this bug, with the file if you may.", List.of()));
    }

    private static JsonUnchecked of(String file, UncheckedOutcome outcome, Problem problem) {
        return new JsonUnchecked(JsonReport.SCHEMA_VERSION, outcome, true, new JsonUnreadable.Input(file), problem);
    }
}
