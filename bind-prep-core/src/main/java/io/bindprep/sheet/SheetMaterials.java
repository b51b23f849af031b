package io.bindprep.sheet;

import io.bindprep.catalogue.Method;
import io.bindprep.run.ElementNeed;
import io.bindprep.run.Materials;
import io.bindprep.run.StockNeed;
import io.bindprep.wording.Measures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Materials of a run as the rows of the sheet's table. */
final class SheetMaterials {
    private SheetMaterials() {}

    /** The rows, the heading first. */
    static List<List<String>> rows(Materials materials, Measures measures) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("What", "For", "Per copy", "All copies", "Overs", "Total to issue"));
        for (StockNeed need : materials.stocks()) {
            rows.add(List.of(
                    need.stock().name(),
                    JobSheet.word(need.use()) + (need.printed() ? "" : ", blank") + size(need, materials, measures),
                    "" + need.aCopy(),
                    "" + need.sheets(),
                    "" + need.overs(),
                    need.total()
                            + (need.press() == null ? "" : " press")
                            + (need.total() == 1 ? " sheet" : " sheets")));
        }
        for (ElementNeed need : materials.elements()) {
            rows.add(List.of(
                    JobSheet.word(need.method()) + " " + need.name(),
                    need.loops() > 0
                            ? "pieces of " + need.loops() + " loops"
                            : need.method() == Method.RINGS
                                    ? "ring mechanism"
                                    : "pieces of at least " + measures.size(need.length()),
                    "" + need.pieces() / materials.copies(),
                    "" + need.pieces(),
                    "" + need.spares(),
                    (need.pieces() + need.spares())
                            + (need.loops() > 0 ? " pieces, " + need.totalLoops() + " loops" : " pieces")));
        }
        BigDecimal known = materials.knownCopyG();
        if (known.signum() > 0) {
            boolean whole = materials.copyG() != null;
            BigDecimal copy = Objects.requireNonNullElse(materials.copyG(), known);
            String least = whole ? "" : "at least ";
            rows.add(List.of(
                    "weight without elements",
                    whole ? "" : "without " + String.join(", ", materials.unweighed()),
                    least + measures.weight(copy),
                    least + measures.weight(copy.multiply(BigDecimal.valueOf(materials.copies()))),
                    "",
                    ""));
        }
        return rows;
    }

    private static String size(StockNeed need, Materials materials, Measures measures) {
        boolean usual =
                need.width().equals(materials.leafWidth()) && need.height().equals(materials.leafHeight());
        return usual ? "" : ", " + measures.area(need.width(), need.height());
    }
}
