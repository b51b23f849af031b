package io.bindprep.binding;

import io.bindprep.catalogue.Pattern;
import io.bindprep.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The row of holes on one leaf.
 *
 * @param length the binding edge's length
 * @param holes whole holes in order from the side guide
 * @param pulledPins pins to take out, numbered from the side guide, from 1; those for a gap too
 * @param fixedPins pins that would cut a partial or ill-webbed hole and cannot be taken out
 * @param minimumWeb least paper left between a hole and the end of the sheet
 * @param guideOff how much too far from the side guide the holes come where it is set by its own scale; zero where that
 *     was not measured, and where the guide is fixed
 * @param gap the stretch kept free for a hanger; null for none
 * @param slant how much further from the binding edge the last hole lies than the first, as the punch was measured; negative
 *     for nearer
 * @param stretch how much longer the row is than its pattern says, first centre to last, as the punch was measured; negative
 *     for shorter
 */
public record HoleRow(
        Length length,
        List<Hole> holes,
        List<Integer> pulledPins,
        List<Integer> fixedPins,
        Length minimumWeb,
        Length guideOff,
        @Nullable Gap gap,
        Length slant,
        Length stretch) {
    public HoleRow {
        holes = List.copyOf(holes);
        pulledPins = List.copyOf(pulledPins);
        fixedPins = List.copyOf(fixedPins);
    }

    /** A row as its pattern says. */
    public HoleRow(
            Length length,
            List<Hole> holes,
            List<Integer> pulledPins,
            List<Integer> fixedPins,
            Length minimumWeb,
            Length guideOff,
            @Nullable Gap gap) {
        this(length, holes, pulledPins, fixedPins, minimumWeb, guideOff, gap, Length.ZERO, Length.ZERO);
    }

    /** A row without a gap, on a guide that stands as it should. */
    public HoleRow(
            Length length, List<Hole> holes, List<Integer> pulledPins, List<Integer> fixedPins, Length minimumWeb) {
        this(length, holes, pulledPins, fixedPins, minimumWeb, Length.ZERO, null);
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

    /** The same row of a punch that was measured. */
    HoleRow measured(Length slanted, Length stretched) {
        return new HoleRow(length, holes, pulledPins, fixedPins, minimumWeb, guideOff, gap, slanted, stretched);
    }

    /**
     * Distance of the holes of a leaf fed turned over from those of the others, along the edge or across it; zero where the
     * row is symmetric and does not slant.
     */
    public Length offset() {
        Length most = slant.abs();
        for (int i = 0; i < holes.size(); i++) {
            Length mirrored = length.minus(holes.get(holes.size() - 1 - i).centre());
            most = most.max(holes.get(i).centre().minus(mirrored).abs());
        }
        return most;
    }

    /** Holes of each unbroken run, in order: one run, or two with a gap between them. */
    public List<Integer> runs() {
        Gap between = gap;
        if (between == null) {
            return holes.isEmpty() ? List.of() : List.of(holes.size());
        }
        int before = (int) holes.stream()
                .filter(h -> h.centre().compareTo(between.start()) <= 0)
                .count();
        return List.of(before, holes.size() - before);
    }
}
