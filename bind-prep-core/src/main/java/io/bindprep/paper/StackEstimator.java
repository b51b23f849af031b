package io.bindprep.paper;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Adds up leaves.
 *
 * <p>A wire, coil or comb book is not pressed, so the nominal is the sum of single-sheet calipers. One lot drifts one
 * way: tolerances are added linearly, not in quadrature. Toner and the air between leaves are not added.
 */
public final class StackEstimator {
    private static final BigDecimal SQUARE_UNITS_PER_SQUARE_METRE =
            new BigDecimal(Length.ofMm(1000).units()).pow(2);

    private StackEstimator() {}

    /**
     * The stack of these leaves.
     *
     * @param stocks the stock of each leaf, in order, covers included
     * @param width width of the trimmed leaf
     * @param height height of the trimmed leaf
     */
    public static Stack estimate(List<Stock> stocks, Length width, Length height) {
        Map<Stock, Integer> counts = new LinkedHashMap<>();
        for (Stock stock : stocks) {
            counts.merge(stock, 1, Integer::sum);
        }
        BigDecimal nominal = BigDecimal.ZERO;
        BigDecimal drift = BigDecimal.ZERO;
        List<String> because = new ArrayList<>();
        for (Map.Entry<Stock, Integer> entry : counts.entrySet()) {
            Stock stock = entry.getKey();
            BigDecimal count = BigDecimal.valueOf(entry.getValue());
            nominal = nominal.add(stock.caliperUm().multiply(count));
            drift = drift.add(stock.toleranceUm().multiply(count));
            because.add(plain(count, 0) + (entry.getValue() == 1 ? " leaf of " : " leaves of ") + stock.name() + " at "
                    + plain(stock.caliperUm(), 1) + " um +-" + plain(stock.toleranceUm(), 1) + " um make "
                    + plain(stock.caliperUm().multiply(count).movePointLeft(3), 2) + " mm (" + stock.source() + ")");
        }
        because.add("tolerances are added over the leaves, for one lot drifts one way: "
                + plain(nominal.movePointLeft(3), 2) + " mm +-" + plain(drift.movePointLeft(3), 2) + " mm");
        BigDecimal weight = weight(counts, width, height, because);
        return new Stack(
                Length.ofMicrometres(nominal.subtract(drift)),
                Length.ofMicrometres(nominal),
                Length.ofMicrometres(nominal.add(drift)),
                weight,
                because);
    }

    private static @Nullable BigDecimal weight(
            Map<Stock, Integer> counts, Length width, Length height, List<String> because) {
        BigDecimal perSquareMetre = BigDecimal.ZERO;
        for (Map.Entry<Stock, Integer> entry : counts.entrySet()) {
            BigDecimal grammage = entry.getKey().grammage();
            if (grammage == null) {
                because.add("no weight: the grammage of " + entry.getKey().name() + " is not known");
                return null;
            }
            perSquareMetre = perSquareMetre.add(grammage.multiply(BigDecimal.valueOf(entry.getValue())));
        }
        BigDecimal grams = perSquareMetre
                .multiply(BigDecimal.valueOf(width.units()))
                .multiply(BigDecimal.valueOf(height.units()))
                .divide(SQUARE_UNITS_PER_SQUARE_METRE, MathContext.DECIMAL64);
        because.add("one copy weighs " + plain(grams, 0) + " g: grammage over leaves of " + width.inMm() + " x "
                + height.inMm());
        return grams;
    }

    private static String plain(BigDecimal value, int decimals) {
        BigDecimal rounded = value.setScale(decimals, RoundingMode.HALF_UP);
        return decimals == 0
                ? rounded.toPlainString()
                : rounded.stripTrailingZeros().toPlainString();
    }
}
