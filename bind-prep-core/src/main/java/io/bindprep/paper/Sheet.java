package io.bindprep.paper;

import io.bindprep.unit.Length;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A sheet as it lies in a stack.
 *
 * @param layers how many of it lie on each other, folded in
 * @param width its width, unfolded
 * @param height its height, unfolded
 */
public record Sheet(Stock stock, int layers, Length width, Length height) {
    // equality by hand: Java links a record's own at its first call, for ten records a tenth of a small check
    @Override
    public boolean equals(@Nullable Object o) {
        return o instanceof Sheet other
                && stock.equals(other.stock)
                && layers == other.layers
                && width.equals(other.width)
                && height.equals(other.height);
    }

    @Override
    public int hashCode() {
        return Objects.hash(stock, layers, width, height);
    }
}
