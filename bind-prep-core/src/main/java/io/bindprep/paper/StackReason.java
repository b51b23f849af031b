package io.bindprep.paper;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.List;

/** Grounds of a stack's thickness and weight: the values, without words. */
public sealed interface StackReason {
    /**
     * Leaves of one stock.
     *
     * @param layers layers of each, more than one where it is folded
     * @param thicknessUm all of them together, micrometres
     */
    record LeavesOf(Stock stock, int leaves, int layers, BigDecimal thicknessUm) implements StackReason {}

    /** All leaves with their tolerances, micrometres. */
    record Tolerances(BigDecimal nominalUm, BigDecimal driftUm) implements StackReason {}

    /** The grammage of a stock is not known. */
    record NoWeight(String stock) implements StackReason {}

    /** Grams of a copy, by the sizes of its leaves. */
    record Weight(BigDecimal grams, List<Size> sizes) implements StackReason {
        public Weight {
            sizes = List.copyOf(sizes);
        }
    }

    /** Size of a leaf. */
    record Size(Length width, Length height) {}
}
