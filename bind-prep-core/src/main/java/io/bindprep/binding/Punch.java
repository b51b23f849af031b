package io.bindprep.binding;

import io.bindprep.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A punch.
 *
 * @param id its name
 * @param pattern the id of the pattern it cuts
 * @param pins how many pins it has, numbered from the side guide, from 1
 * @param firstPin side guide to the axis of pin 1; null where the guide moves, so that a row can be centred
 * @param capacity thickness it takes at once
 * @param pullable the pins that can be taken out; null for all
 * @param longestEdge the longest bound edge it takes
 * @param leastWeb least paper that is left between a hole and the end of the sheet
 */
public record Punch(
        String id,
        String pattern,
        int pins,
        @Nullable Length firstPin,
        Length capacity,
        @Nullable List<Integer> pullable,
        Length longestEdge,
        Length leastWeb,
        String source) {
    public Punch {
        pullable = pullable == null ? null : List.copyOf(pullable);
    }

    boolean canPull(int pin) {
        return pullable == null || pullable.contains(pin);
    }
}
