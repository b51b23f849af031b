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

        @JsonPropertyDescription("the worst mark on each page; with check --since a later check is compared with it")
        @JsonInclude(JsonInclude.Include.NON_EMPTY)
        List<Place> places,

        @JsonPropertyDescription("a short value for what was seen: the same as long as it neither moves nor changes")
        String seen,

        @JsonPropertyDescription("who lets it pass and why; it fails nothing")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Accepted accepted,

        @JsonPropertyDescription("what became of it since the earlier check that it is compared with")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Since since) {
    /** The worst mark on one page. */
    record Place(
            @JsonPropertyDescription("page number, from 1") int page,

            @JsonPropertyDescription("its distance from the binding edge")
            BigDecimal fromBindingEdgeMm,

            @JsonPropertyDescription("where it begins and ends along the binding edge")
            JsonPair alongMm,

            @JsonPropertyDescription("the words it shows, shortened") @JsonInclude(JsonInclude.Include.NON_EMPTY)
            String words) {
        static Place of(Finding.Place p) {
            return new Place(p.page(), Json.rounded(p.nearMm()), JsonPair.of(p.startMm(), p.endMm()), p.words());
        }
    }

    /** Comparison with an earlier check. */
    record Since(
            @JsonPropertyDescription(
                    "new: nothing like it was there; worse: on more pages, nearer the binding edge or of a"
                            + " worse severity; same: it was there, no better than now")
            Finding.Change change,

            @JsonPropertyDescription("the way in which it is worse") @JsonInclude(JsonInclude.Include.NON_EMPTY)
            String detail) {}

    /** Somebody's acceptance. */
    record Accepted(
            @JsonPropertyDescription("why it may pass") String reason,

            @JsonPropertyDescription("who says so") String who) {}

    static JsonFinding of(Finding f, String fingerprint) {
        Finding.Accepted by = f.accepted();
        Finding.Span along = f.alongMm();
        Finding.Seen seen = f.seen();
        Finding.Since since = f.since();
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
                seen == null ? List.of() : seen.places().stream().map(Place::of).toList(),
                fingerprint,
                by == null ? null : new Accepted(by.reason(), by.who()),
                since == null ? null : new Since(since.change(), since.detail()));
    }
}
