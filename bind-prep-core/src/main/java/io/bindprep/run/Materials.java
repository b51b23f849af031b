package io.bindprep.run;

import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.math.MathContext;
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
 * @param because how the numbers came about
 */
public record Materials(
        int copies,
        Length leafWidth,
        Length leafHeight,
        List<StockNeed> stocks,
        List<ElementNeed> elements,
        @Nullable BigDecimal copyG,
        @Nullable BigDecimal runG,
        List<MaterialReason> because) {
    private static final BigDecimal SQUARE_UNITS_PER_SQUARE_METRE =
            new BigDecimal(Length.ofMm(1000).units()).pow(2);

    public Materials {
        stocks = List.copyOf(stocks);
        elements = List.copyOf(elements);
        because = List.copyOf(because);
    }

    /** Grams of the leaves of a copy whose grammage is known; less than a copy weighs where {@link #copyG} is null. */
    public BigDecimal knownCopyG() {
        BigDecimal grams = BigDecimal.ZERO;
        for (StockNeed need : stocks) {
            BigDecimal grammage = need.stock().grammage();
            if (grammage != null) {
                grams = grams.add(grammage.multiply(BigDecimal.valueOf(need.aCopy()))
                        .multiply(BigDecimal.valueOf(need.width().units()))
                        .multiply(BigDecimal.valueOf(need.height().units()))
                        .divide(SQUARE_UNITS_PER_SQUARE_METRE, MathContext.DECIMAL64));
            }
        }
        return grams;
    }

    /** Grams of the leaves of all copies whose grammage is known; less than they weigh where {@link #runG} is null. */
    public BigDecimal knownRunG() {
        return knownCopyG().multiply(BigDecimal.valueOf(copies));
    }

    /** Names of the stocks whose grammage is not known, each once. */
    public List<String> unweighed() {
        return stocks.stream()
                .map(StockNeed::stock)
                .filter(s -> s.grammage() == null)
                .map(Stock::name)
                .distinct()
                .toList();
    }
}
