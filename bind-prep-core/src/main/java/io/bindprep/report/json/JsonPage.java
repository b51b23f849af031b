package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.check.PageReport;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.marks.Verdict;
import io.bindprep.page.PageEdge;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** One page as JSON. */
record JsonPage(
        @JsonPropertyDescription("page number, from 1") int page,

        @JsonPropertyDescription("whether it is on the front or the back of its leaf")
        Side side,

        @JsonPropertyDescription("width and height of the trimmed page as the reader sees it")
        JsonPair trimMm,

        @JsonPropertyDescription("the edge of this page, as the reader sees it, that is bound")
        PageEdge bindingEdge,

        @JsonPropertyDescription("what becomes of it when it is punched")
        Verdict verdict,

        @JsonPropertyDescription(
                "the visible mark nearest the binding edge that is not background; null where none lies in"
                        + " the strip that was looked at")
        @Nullable
        Nearest nearest,

        @JsonPropertyDescription("why it could not be analysed whole")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        String unchecked) {

    /** Of a leaf. */
    enum Side {
        RECTO,
        VERSO
    }

    /** A mark. */
    record Nearest(
            @JsonPropertyDescription("what kind of thing prints")
            MarkKind kind,

            @JsonPropertyDescription("its minimum distance from the binding edge")
            BigDecimal fromBindingEdgeMm,

            @JsonPropertyDescription(
                    "where it begins and ends along the binding edge, from the head, or from the left of a"
                            + " page bound at top or bottom")
            JsonPair alongMm,

            @JsonPropertyDescription(
                    "what settled it: exact outlines, an estimate where its font or appearance is not in the file, or the pixels of the strip")
            Stage stage,

            @JsonPropertyDescription("the words it shows, shortened") @JsonInclude(JsonInclude.Include.NON_EMPTY)
            String words) {
        static Nearest of(Mark mark) {
            return new Nearest(
                    mark.kind(),
                    Json.rounded(mark.nearMm()),
                    JsonPair.of(mark.alongStartMm(), mark.alongEndMm()),
                    mark.stage(),
                    mark.words());
        }
    }

    static JsonPage of(PageReport p) {
        Mark nearest = p.verdict().nearest();
        return new JsonPage(
                p.facts().page(),
                p.place().recto() ? Side.RECTO : Side.VERSO,
                JsonPair.of(p.facts().trimWidth().mm(), p.facts().trimHeight().mm()),
                p.place().bindingEdge(),
                p.verdict().verdict(),
                nearest == null ? null : Nearest.of(nearest),
                p.verdict().unchecked());
    }
}
