package io.bindprep.report;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.check.Finding;
import io.bindprep.check.PageRanges;
import io.bindprep.check.Severity;
import java.math.BigDecimal;
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

        @JsonPropertyDescription("where the worst one begins and ends along the bound edge")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        JsonPair alongMm) {
    static JsonFinding of(Finding f) {
        Finding.Span along = f.alongMm();
        return new JsonFinding(
                f.rule(),
                f.severity(),
                PageRanges.compact(f.pages()),
                f.message(),
                f.remedy(),
                Json.roundedOrNull(f.measuredMm()),
                Json.roundedOrNull(f.limitMm()),
                along == null ? null : JsonPair.of(along.startMm(), along.endMm()));
    }
}
