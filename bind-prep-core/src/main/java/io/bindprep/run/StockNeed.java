package io.bindprep.run;

import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * Sheets of one stock for leaves of one use and size.
 *
 * @param printed whether they go through the printer
 * @param width width of the leaf, unfolded
 * @param height height of the leaf, unfolded
 * @param aCopy leaves in one copy, all volumes together
 * @param sheets sheets for all copies: press sheets where {@code press} says so, else of the leaf's size
 * @param overs spare sheets on top
 * @param press how leaves are cut from press sheets; null where the sheet is as large as the leaf
 */
public record StockNeed(
        Use use,
        Stock stock,
        boolean printed,
        Length width,
        Length height,
        int aCopy,
        long sheets,
        long overs,
        @Nullable Press press) {
    /** Sheets to lay out. */
    public long total() {
        return sheets + overs;
    }
}
