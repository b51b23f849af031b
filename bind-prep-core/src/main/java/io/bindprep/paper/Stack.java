package io.bindprep.paper;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * The thickness range and weight of block and covers.
 *
 * @param min thinnest likely
 * @param nominal from the stocks' nominal calipers
 * @param max thickest likely
 * @param weightG grams of one copy; null where a stock's grammage is unknown
 * @param because how the numbers came about
 */
public record Stack(
        Length min, Length nominal, Length max, @Nullable BigDecimal weightG, java.util.List<StackReason> because) {
    public Stack {
        because = java.util.List.copyOf(because);
    }

    /**
     * Thickness that an element is chosen by.
     *
     * @param bySize whether the job asks for sizes with its clearance: then the thickest likely one counts, else the nominal
     */
    public Length deciding(boolean bySize) {
        return bySize ? max : nominal;
    }
}
