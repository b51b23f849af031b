package io.bindprep.paper;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
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

    private static final int MOST_SIZES = 3;

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
        List<String> because = new ArrayList<>();
        for (Map.Entry<Layered, Integer> entry : layered(sheets).entrySet()) {
            Stock stock = entry.getKey().stock();
            int layers = entry.getKey().layers();
            BigDecimal count = BigDecimal.valueOf((long) entry.getValue() * layers);
            nominal = nominal.add(stock.caliperUm().multiply(count));
            drift = drift.add(stock.toleranceUm().multiply(count));
            because.add(entry.getValue() + (entry.getValue() == 1 ? " leaf of " : " leaves of ") + stock.name()
                    + (layers == 1 ? "" : ", folded to " + layers + " layers,") + " at "
                    + plain(stock.caliperUm(), 1) + " um +-" + plain(stock.toleranceUm(), 1) + " um make "
                    + plain(stock.caliperUm().multiply(count).movePointLeft(3), 2) + " mm (" + stock.source() + ")");
        }
        because.add("tolerances are added over the leaves, for one lot drifts one way: "
                + plain(nominal.movePointLeft(3), 2) + " mm +-" + plain(drift.movePointLeft(3), 2) + " mm");
        BigDecimal weight = weight(sheets, because);
        return new Stack(
                Length.ofMicrometres(nominal.subtract(drift)),
                Length.ofMicrometres(nominal),
                Length.ofMicrometres(nominal.add(drift)),
                weight,
                because);
    }

    private record Layered(Stock stock, int layers) {}

    private static Map<Layered, Integer> layered(List<Sheet> sheets) {
        Map<Layered, Integer> counts = new LinkedHashMap<>();
        sheets.forEach(s -> counts.merge(new Layered(s.stock(), s.layers()), 1, Integer::sum));
        return counts;
    }

    private static @Nullable BigDecimal weight(List<Sheet> sheets, List<String> because) {
        Map<Sheet, Integer> counts = new LinkedHashMap<>();
        sheets.forEach(s -> counts.merge(s, 1, Integer::sum));
        BigDecimal grams = BigDecimal.ZERO;
        Set<String> sizes = new LinkedHashSet<>();
        for (Map.Entry<Sheet, Integer> entry : counts.entrySet()) {
            Sheet sheet = entry.getKey();
            BigDecimal grammage = sheet.stock().grammage();
            if (grammage == null) {
                because.add("no weight: the grammage of " + sheet.stock().name() + " is not known");
                return null;
            }
            sizes.add(sheet.width().inMm() + " x " + sheet.height().inMm());
            grams = grams.add(grammage.multiply(BigDecimal.valueOf(entry.getValue()))
                    .multiply(BigDecimal.valueOf(sheet.width().units()))
                    .multiply(BigDecimal.valueOf(sheet.height().units())));
        }
        grams = grams.divide(SQUARE_UNITS_PER_SQUARE_METRE, MathContext.DECIMAL64);
        because.add("one copy weighs " + plain(grams, 0) + " g: grammage over leaves of " + most(sizes));
        return grams;
    }

    private static String most(Set<String> sizes) {
        String first = sizes.stream().limit(MOST_SIZES).collect(Collectors.joining(", "));
        return sizes.size() > MOST_SIZES ? first + " and other sizes" : first;
    }

    private static String plain(BigDecimal value, int decimals) {
        return value.setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
