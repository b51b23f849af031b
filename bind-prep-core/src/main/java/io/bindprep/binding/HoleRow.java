package io.bindprep.binding;

import io.bindprep.catalogue.Pattern;
import io.bindprep.unit.Length;
import java.util.List;

/**
 * The row of holes on one leaf.
 *
 * @param length the bound edge's length
 * @param holes whole holes in order from the side guide
 * @param pulledPins pins to take out, numbered from the side guide, from 1
 * @param stuckPins pins that would cut a partial or ill-webbed hole and cannot be taken out
 * @param leastWeb least paper left between a hole and the end of the sheet
 */
public record HoleRow(
        Length length, List<Hole> holes, List<Integer> pulledPins, List<Integer> stuckPins, Length leastWeb) {
    public HoleRow {
        holes = List.copyOf(holes);
        pulledPins = List.copyOf(pulledPins);
        stuckPins = List.copyOf(stuckPins);
    }

    /**
     * A centred row of a given count, as a standard may name it ("22 on 11 in"), whatever web that leaves.
     *
     * @throws IllegalArgumentException where the count is below 1, or not that of a pattern with a fixed set of holes
     */
    public static HoleRow centred(Pattern pattern, Length length, int count) {
        if (count < 1 || (!pattern.repeating() && count != pattern.spacings().size() + 1)) {
            throw new IllegalArgumentException(pattern.id() + " has no row of " + count);
        }
        return RowMaker.centred(pattern, length, count);
    }
}
