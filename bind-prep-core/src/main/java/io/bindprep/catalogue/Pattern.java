package io.bindprep.catalogue;

import io.bindprep.unit.Length;
import java.util.List;

/**
 * A hole pattern.
 *
 * @param id its id; XJDF's where XJDF has it
 * @param pitchName the trade's name of the pitch ("3:1", "9/16 in"), else the id
 * @param repeating whether one spacing repeats along the edge; else the spacings are all there are
 * @param round whether the hole is round; else rectangular (a mixed pattern counts as its slots)
 * @param holeAlong the hole's size along the binding edge that is used
 * @param holeAcross the hole's size away from the binding edge that is used
 * @param holePublished what is published for the hole, as text; "" for nothing
 * @param spacings centre to centre, in order
 * @param centre binding edge to hole centre that is used
 * @param centrePublished what is published for the centre, as text; "" for nothing
 * @param referenceEdge the edge of the portrait sheet it lies along, as published
 * @param publishedCount how many holes are published, as text; "" for none
 * @param elements the group of {@link Elements} that goes with it
 */
public record Pattern(
        String id,
        Method method,
        String pitchName,
        boolean repeating,
        boolean round,
        Length holeAlong,
        Length holeAcross,
        String holePublished,
        List<Length> spacings,
        Length centre,
        String centrePublished,
        String referenceEdge,
        String publishedCount,
        String elements,
        String source) {
    public Pattern {
        spacings = List.copyOf(spacings);
    }

    /** Axis to centre; the first spacing where there are several. */
    public Length pitch() {
        return spacings.get(0);
    }

    /** First centre to last centre of a row of so many holes. */
    public Length span(int holes) {
        if (repeating) {
            return pitch().times(holes - 1L);
        }
        Length span = Length.ZERO;
        for (Length spacing : spacings.subList(0, holes - 1)) {
            span = span.plus(spacing);
        }
        return span;
    }
}
