package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.catalogue.Method;
import io.bindprep.paper.Stock;
import io.bindprep.report.words.Sentences;
import io.bindprep.run.ElementNeed;
import io.bindprep.run.Materials;
import io.bindprep.run.Press;
import io.bindprep.run.StockNeed;
import io.bindprep.run.Use;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Materials of the run, as JSON. */
record JsonMaterials(
        @JsonPropertyDescription("how many books") int copies,

        @JsonPropertyDescription("width and height of the trimmed leaf")
        JsonPair leafMm,

        @JsonPropertyDescription("sheets by use and stock, in the order of the book")
        List<Sheets> stocks,

        @JsonPropertyDescription("elements by size; empty where none takes the stack")
        List<Pieces> elements,

        @JsonPropertyDescription("weight of a copy without its element; null where a stock's grammage is unknown")
        @Nullable
        BigDecimal copyG,

        @JsonPropertyDescription("weight of the leaves of a copy whose grammage is known: a copy weighs at least this")
        BigDecimal knownCopyG,

        @JsonPropertyDescription("weight of all copies without elements and overs; null where it is unknown") @Nullable
        BigDecimal runG,

        @JsonPropertyDescription("how the numbers came about, one sentence each")
        List<String> because) {

    /** Sheets of one stock for one use. */
    record Sheets(
            @JsonPropertyDescription("what they are for") Use use,

            @JsonPropertyDescription("name of the stock") String stock,

            @JsonPropertyDescription("what a punch meets") Stock.Kind kind,

            @JsonPropertyDescription("whether they go through the printer")
            boolean printed,

            @JsonPropertyDescription("width and height of the leaf, unfolded")
            JsonPair leafMm,

            @JsonPropertyDescription("leaves in one copy, all volumes together")
            int copyLeaves,

            @JsonPropertyDescription("the press sheet that leaves are cut from; null where sheets have the leaf's size")
            @Nullable
            String pressSheet,

            @JsonPropertyDescription("leaves on a sheet") int up,

            @JsonPropertyDescription("what stands on a press sheet; null without one")
            Press.@Nullable Imposition imposition,

            @JsonPropertyDescription("sheets for all copies")
            long netSheets,

            @JsonPropertyDescription("spare sheets on top") long oversSheets,

            @JsonPropertyDescription("to lay out") long totalSheets) {
        static Sheets of(StockNeed n) {
            Press press = n.press();
            return new Sheets(
                    n.use(),
                    n.stock().name(),
                    n.stock().kind(),
                    n.printed(),
                    JsonPair.of(n.width().mm(), n.height().mm()),
                    n.aCopy(),
                    press == null ? null : press.sheet().name(),
                    press == null ? 1 : press.up(),
                    press == null ? null : press.imposition(),
                    n.sheets(),
                    n.overs(),
                    n.total());
        }
    }

    /** Elements of one size. */
    record Pieces(
            @JsonPropertyDescription("what kind") Method method,

            @JsonPropertyDescription("nominal size as the trade writes it")
            String name,

            @JsonPropertyDescription("loops of one piece; 0 where pieces are not cut by loops")
            int loops,

            @JsonPropertyDescription("hole row of one piece and half a pitch beyond at either end")
            BigDecimal lengthMm,

            @JsonPropertyDescription("pieces in all copies") long pieces,

            @JsonPropertyDescription("spare pieces on top") long sparePieces,

            @JsonPropertyDescription("loops to cut, spares included")
            long totalLoops) {
        static Pieces of(ElementNeed n) {
            return new Pieces(
                    n.method(), n.name(), n.loops(), Json.mm(n.length()), n.pieces(), n.spares(), n.totalLoops());
        }
    }

    static JsonMaterials of(Materials m) {
        return new JsonMaterials(
                m.copies(),
                JsonPair.of(m.leafWidth().mm(), m.leafHeight().mm()),
                m.stocks().stream().map(Sheets::of).toList(),
                m.elements().stream().map(Pieces::of).toList(),
                grams(m.copyG()),
                Json.rounded(m.knownCopyG(), 1),
                grams(m.runG()),
                m.because().stream().map(Sentences::of).toList());
    }

    private static @Nullable BigDecimal grams(@Nullable BigDecimal grams) {
        return grams == null ? null : Json.rounded(grams, 1);
    }
}
