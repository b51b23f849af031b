package io.bindprep.paper;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
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
     * The stack of leaves of one size, none folded.
     *
     * @param stocks the stock of each leaf, in order, covers included
     * @param width width of the trimmed leaf
     * @param height height of the trimmed leaf
     */
    public static Stack estimate(List<Stock> stocks, Length width, Length height) {
        return estimate(stocks.stream().map(s -> new Sheet(s, 1, width, height)).toList());
    }

    /**
     * The stack of these sheets, in order, covers included; a folded one counts with all its layers, and weighs by its
     * unfolded size.
     */
    public static Stack estimate(List<Sheet> sheets) {
        BigDecimal nominal = BigDecimal.ZERO;
        BigDecimal drift = BigDecimal.ZERO;
        List<StackReason> because = new ArrayList<>();
        for (Map.Entry<Layered, Integer> entry : layered(sheets).entrySet()) {
            Stock stock = entry.getKey().stock();
            int layers = entry.getKey().layers();
            BigDecimal count = BigDecimal.valueOf((long) entry.getValue() * layers);
            nominal = nominal.add(stock.caliperUm().multiply(count));
            drift = drift.add(stock.toleranceUm().multiply(count));
            because.add(new StackReason.LeavesOf(
                    stock, entry.getValue(), layers, stock.caliperUm().multiply(count)));
        }
        because.add(new StackReason.Tolerances(nominal, drift));
        BigDecimal weight = weight(sheets, because);
        return new Stack(
                Length.ofMicrometres(nominal.subtract(drift)),
                Length.ofMicrometres(nominal),
                Length.ofMicrometres(nominal.add(drift)),
                weight,
                because);
    }

    private record Layered(Stock stock, int layers) {
        // equality by hand: Java links a record's own at its first call, for ten records a tenth of a small check
        @Override
        public boolean equals(@Nullable Object o) {
            return o instanceof Layered other && stock.equals(other.stock) && layers == other.layers;
        }

        @Override
        public int hashCode() {
            return Objects.hash(stock, layers);
        }
    }

    private static Map<Layered, Integer> layered(List<Sheet> sheets) {
        Map<Layered, Integer> counts = new LinkedHashMap<>();
        sheets.forEach(s -> counts.merge(new Layered(s.stock(), s.layers()), 1, Integer::sum));
        return counts;
    }

    private static @Nullable BigDecimal weight(List<Sheet> sheets, List<StackReason> because) {
        Map<Sheet, Integer> counts = new LinkedHashMap<>();
        sheets.forEach(s -> counts.merge(s, 1, Integer::sum));
        BigDecimal grams = BigDecimal.ZERO;
        Set<StackReason.Size> sizes = new LinkedHashSet<>();
        for (Map.Entry<Sheet, Integer> entry : counts.entrySet()) {
            Sheet sheet = entry.getKey();
            BigDecimal grammage = sheet.stock().grammage();
            if (grammage == null) {
                because.add(new StackReason.NoWeight(sheet.stock().name()));
                return null;
            }
            sizes.add(new StackReason.Size(sheet.width(), sheet.height()));
            grams = grams.add(grammage.multiply(BigDecimal.valueOf(entry.getValue()))
                    .multiply(BigDecimal.valueOf(sheet.width().units()))
                    .multiply(BigDecimal.valueOf(sheet.height().units())));
        }
        grams = grams.divide(SQUARE_UNITS_PER_SQUARE_METRE, MathContext.DECIMAL64);
        because.add(new StackReason.Weight(grams, List.copyOf(sizes)));
        return grams;
    }
}
