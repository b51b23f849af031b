package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.paper.Stock;
import io.bindprep.wording.Terms;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Leaves and pages that are not like the others, as JSON. */
record JsonSpecial(
        @JsonPropertyDescription("dividers") List<Divider> tabs,

        @JsonPropertyDescription("pages on leaves that fold out")
        List<FoldedPages> foldOuts,

        @JsonPropertyDescription("pages that lie rotated 90 degrees in the book")
        List<RotatedPages> rotated,

        @JsonPropertyDescription("pages whose leaves are cut to another size")
        List<SizedPages> otherSizes) {

    /** A divider. */
    record Divider(
            @JsonPropertyDescription("the pages it carries, as a range; null where it is blank") @Nullable
            String pages,

            @JsonPropertyDescription("the page it stands before; null where it carries pages") @Nullable
            Integer before,

            @JsonPropertyDescription("what it is made of") JsonJob.Paper stock,

            @JsonPropertyDescription("how far its tab stands out beyond the trim")
            BigDecimal extensionMm) {}

    /** Pages that fold out. */
    record FoldedPages(
            @JsonPropertyDescription("as a range") String pages,

            @JsonPropertyDescription("of each leaf, the bound one included")
            int panels,

            @JsonPropertyDescription("what folds keep from the trim and the " + Terms.HOLE_ZONE)
            BigDecimal allowanceMm,

            @JsonPropertyDescription("their own stock; null for that of the block")
            JsonJob.@Nullable Paper stock) {}

    /** Pages that lie turned. */
    record RotatedPages(
            @JsonPropertyDescription("as a range") String pages,

            @JsonPropertyDescription("the side of the book their head lies at")
            Side head) {}

    /** A side of the book. */
    enum Side {
        LEFT,
        RIGHT
    }

    /** Pages of another size. */
    record SizedPages(
            @JsonPropertyDescription("as a range") String pages,

            @JsonPropertyDescription("width and height of their leaves")
            JsonPair leafMm) {}

    static JsonSpecial of(SpecialLeaves s) {
        return new JsonSpecial(
                s.tabs().stream()
                        .map(t -> new Divider(
                                t.printed() ? JsonJob.range(t.pages()) : null,
                                t.printed() ? null : t.pages().first(),
                                JsonJob.Paper.of(t.stock()),
                                Json.mm(t.extension())))
                        .toList(),
                s.foldOuts().stream().map(JsonSpecial::folded).toList(),
                s.rotated().stream()
                        .map(t -> new RotatedPages(JsonJob.range(t.pages()), t.headLeft() ? Side.LEFT : Side.RIGHT))
                        .toList(),
                s.sizes().stream()
                        .map(o -> new SizedPages(
                                JsonJob.range(o.pages()),
                                JsonPair.of(
                                        o.size().width().mm(), o.size().height().mm())))
                        .toList());
    }

    private static FoldedPages folded(SpecialLeaves.FoldOut fold) {
        Stock stock = fold.stock();
        return new FoldedPages(
                JsonJob.range(fold.pages()),
                fold.panels(),
                Json.mm(fold.allowance()),
                stock == null ? null : JsonJob.Paper.of(stock));
    }
}
