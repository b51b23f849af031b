package io.bindprep.paper;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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
    record Size(Length width, Length height) {
        // equality by hand: Java links a record's own at its first call, for ten records a tenth of a small check
        @Override
        public boolean equals(@Nullable Object o) {
            return o instanceof Size other && width.equals(other.width) && height.equals(other.height);
        }

        @Override
        public int hashCode() {
            return Objects.hash(width, height);
        }
    }
}
