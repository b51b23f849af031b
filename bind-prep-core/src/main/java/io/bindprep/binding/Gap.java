package io.bindprep.binding;

import io.bindprep.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The stretch in the middle of the binding edge that a calendar's hanger needs free of holes.
 *
 * @param start where it begins, from the head of the recto (from its left where the leaf is bound at top)
 * @param end where it ends
 * @param pulledPins pins taken out for it, numbered from the side guide
 * @param fixedPins pins that would have to go for it and cannot be pulled; their holes are cut
 * @param thumbCut the notch by which the hanger is reached; null for none
 */
public record Gap(
        Length start,
        Length end,
        List<Integer> pulledPins,
        List<Integer> fixedPins,
        @Nullable ThumbCut thumbCut) {
    /**
     * Half an ellipse out of the middle of the binding edge.
     *
     * @param width along the binding edge
     * @param depth away from the binding edge
     */
    public record ThumbCut(Length width, Length depth) {}

    public Gap {
        pulledPins = List.copyOf(pulledPins);
        fixedPins = List.copyOf(fixedPins);
    }
}
