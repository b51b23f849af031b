package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.problem.UnreadableInputException;

/** A file that could not be read at all, as JSON. */
record JsonUnreadable(
        @JsonPropertyDescription("version of this format: names never change their meaning, new ones may come")
        int schemaVersion,

        @JsonPropertyDescription("nothing is known of it") UnreadableOutcome outcome,

        @JsonPropertyDescription("whether the job fails: always")
        boolean failed,

        @JsonPropertyDescription("the file that was to be read")
        Input input,

        @JsonPropertyDescription("why it could not be read") Problem problem) {

    /** The only one. */
    enum UnreadableOutcome {
        UNREADABLE
    }

    /** The file. */
    record Input(
            @JsonPropertyDescription("its name, as the caller gave it")
            String file) {}

    /** Fault of it. */
    record Problem(
            @JsonPropertyDescription("in one word, for programs")
            UnreadableInputException.Reason reason,

            @JsonPropertyDescription("in a sentence, for people")
            String message,

            @JsonPropertyDescription("what to do, or to ask the client for")
            String remedy) {}

    static JsonUnreadable of(String file, UnreadableInputException e) {
        return new JsonUnreadable(
                JsonReport.SCHEMA_VERSION,
                UnreadableOutcome.UNREADABLE,
                true,
                new Input(file),
                new Problem(e.reason(), String.valueOf(e.getMessage()), e.remedy()));
    }
}
