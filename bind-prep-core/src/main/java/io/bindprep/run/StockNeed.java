package io.bindprep.run;

import io.bindprep.paper.Stock;

/**
 * Sheets of one stock for one use, at the size of the leaf.
 *
 * @param printed whether they go through the printer
 * @param aCopy sheets in one copy, all volumes together
 * @param net sheets in all copies
 * @param overs spare sheets on top
 */
public record StockNeed(Use use, Stock stock, boolean printed, int aCopy, long net, long overs) {
    /** Sheets to lay out. */
    public long total() {
        return net + overs;
    }
}
