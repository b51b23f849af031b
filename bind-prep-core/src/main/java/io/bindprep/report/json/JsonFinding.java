package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.check.Finding;
import io.bindprep.check.Severity;
import io.bindprep.marks.Stage;
import io.bindprep.wording.PageLists;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A finding as JSON. */
record JsonFinding(
        @JsonPropertyDescription("stable id, one of those in FINDINGS.md")
        String rule,

        @JsonPropertyDescription("an error spoils the book, a warning may, a note is good to know")
        Severity severity,

        @JsonPropertyDescription("the pages it holds for, as ranges; empty for the whole document")
        String pages,

        @JsonPropertyDescription("what is so, where, with the measured value and the limit")
        String message,

        @JsonPropertyDescription("what to do") String remedy,

        @JsonPropertyDescription("the worst measured value") @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
        BigDecimal measuredMm,

        @JsonPropertyDescription("the limit it was held against") @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
        BigDecimal limitMm,

        @JsonPropertyDescription("where the worst one begins and ends along the binding edge")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        JsonPair alongMm,

        @JsonPropertyDescription(
                "what settled the worst mark: exact outlines, an estimate where its font or appearance is not in the file, or the pixels of the strip")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Stage stage,

        @JsonPropertyDescription("the pins whose holes meet the worst mark, from the side guide")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        List<Integer> pins,

        @JsonPropertyDescription("the words that the worst mark shows, shortened")
        @JsonInclude(JsonInclude.Include.NON_EMPTY)
        String words,

        @JsonPropertyDescription("a short value for what was seen: the same as long as it neither moves nor changes")
        String seen,

        @JsonPropertyDescription("who lets it pass and why; it fails nothing")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Accepted accepted) {
    /** Somebody's acceptance. */
    record Accepted(
            @JsonPropertyDescription("why it may pass") String reason,

            @JsonPropertyDescription("who says so") String who) {}

    static JsonFinding of(Finding f, String fingerprint) {
        Finding.Accepted by = f.accepted();
        Finding.Span along = f.alongMm();
        Finding.Seen seen = f.seen();
        return new JsonFinding(
                f.rule(),
                f.severity(),
                PageLists.compact(f.pages()),
                f.message(),
                f.remedy(),
                Json.roundedOrNull(f.measuredMm()),
                Json.roundedOrNull(f.limitMm()),
                along == null ? null : JsonPair.of(along.startMm(), along.endMm()),
                seen == null ? null : seen.stage(),
                seen == null ? null : seen.pins(),
                seen == null ? "" : seen.words(),
                fingerprint,
                by == null ? null : new Accepted(by.reason(), by.who()));
    }
}
