package io.bindprep.run;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Materials of the run.
 *
 * @param copies how many books
 * @param leafWidth width of the trimmed leaf
 * @param leafHeight height of the trimmed leaf
 * @param stocks sheets by use and stock, in the order of the book
 * @param elements by size; empty where no element takes the stack
 * @param copyG grams of a copy without its element; null where a stock's grammage is unknown
 * @param runG grams of all copies without elements and overs; null where a stock's grammage is unknown
 * @param because how the numbers came about, one sentence each
 */
public record Materials(
        int copies,
        Length leafWidth,
        Length leafHeight,
        List<StockNeed> stocks,
        List<ElementNeed> elements,
        @Nullable BigDecimal copyG,
        @Nullable BigDecimal runG,
        List<String> because) {
    public Materials {
        stocks = List.copyOf(stocks);
        elements = List.copyOf(elements);
        because = List.copyOf(because);
    }
}
