package io.bindprep.catalogue;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Errors of a shop's punch as measured; each null where it was not measured.
 *
 * @param depth how much deeper the middle of the row of pins cuts than the settings say; negative for shallower
 * @param side how far pin 1 stands off its place along the binding edge, positive away from the side guide
 * @param skew how much deeper the last pin cuts than pin 1, over the whole row of pins; negative for shallower
 * @param pitch how much longer the whole row of pins is than its pattern says; negative for shorter
 */
public record MeasuredErrors(
        @Nullable Deviation depth,
        @Nullable Deviation side,
        @Nullable Deviation skew,
        @Nullable Deviation pitch) {
    /** Those that were measured, by their names in a punch's file, in its order. */
    public Map<String, Deviation> byName() {
        Map<String, Deviation> named = new LinkedHashMap<>();
        List<@Nullable Deviation> errors = Arrays.asList(depth, side, skew, pitch);
        for (int i = 0; i < errors.size(); i++) {
            Deviation error = errors.get(i);
            if (error != null) {
                named.put(PunchKeys.ERRORS.get(i), error);
            }
        }
        return named;
    }
}
