package io.bindprep.binding;

import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.ElementSizes;
import io.bindprep.catalogue.Method;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Plan of the binding.
 *
 * @param pattern the hole pattern's id
 * @param pitchName the trade's name of the pitch ("3:1", "2:1"), else the pattern's id
 * @param pitch centre to centre; the first spacing where a ring pattern has several
 * @param punch the punch's id
 * @param chosen the smallest element that takes the stack
 * @param edgeDistance binding edge to hole centre
 * @param depth the setting of the depth stop that gives it
 * @param holeAlong the hole's size along the binding edge
 * @param holeAcross the hole's size away from the binding edge
 * @param round whether the hole is round; else it is rectangular
 * @param loops loops of the element to cut, 0 where the element has none
 * @param lifts sheets in each lift of one copy, in order
 * @param closer what the closer is set to; null where nothing is closed or no element fits
 * @param closerTakes the sizes of element that the punch's closer takes; null where no bound is known
 * @param bindingMargin distance live matter keeps from the binding edge
 * @param punchingTolerance how far a hole may lie off its place, either way
 * @param skew how skewed a sheet may sit in the punch; null where that is not known
 * @param because each decision with its numbers and source
 */
public record Plan(
        Method method,
        String pattern,
        String pitchName,
        Length pitch,
        String punch,
        ElementChoice chosen,
        Length edgeDistance,
        Depth depth,
        Length holeAlong,
        Length holeAcross,
        boolean round,
        HoleRow row,
        int loops,
        List<Integer> lifts,
        @Nullable Length closer,
        @Nullable ElementSizes closerTakes,
        Length bindingMargin,
        Length punchingTolerance,
        @Nullable Skew skew,
        List<Reason> because) {
    public Plan {
        lifts = List.copyOf(lifts);
        because = List.copyOf(because);
    }

    /** The same plan as the chosen one. */
    Plan decided(Depth.Decider decider, Reason why) {
        List<Reason> reasons = new ArrayList<>(because);
        reasons.add(why);
        reasons.sort(Comparator.comparing(Reason::topic));
        Depth settled = new Depth(depth.setting(), depth.outside(), depth.turnsBelow(), decider);
        return new Plan(
                method,
                pattern,
                pitchName,
                pitch,
                punch,
                chosen,
                edgeDistance,
                settled,
                holeAlong,
                holeAcross,
                round,
                row,
                loops,
                lifts,
                closer,
                closerTakes,
                bindingMargin,
                punchingTolerance,
                skew,
                reasons);
    }

    /** The element; null where none takes the stack or none is known. */
    public @Nullable Element element() {
        return chosen.element();
    }

    /** Returns true if the paper outside the holes lies inside the closed element beside a stack so thick; so too where none is known. */
    public boolean paperLiesInside(Length stack) {
        Element element = element();
        return element == null || depth.outside().compareTo(Turning.limit(element.size(), stack)) < 0;
    }

    /** Loops of each piece of the element, in order; empty where it has none. */
    public List<Integer> pieces() {
        return loops == 0 ? List.of() : row.runs();
    }

    /** Returns true if every leaf must go into the punch with the same end to the side guide. */
    public boolean sameEndToGuide() {
        return row.offset().compareTo(punchingTolerance) > 0;
    }

    /** Binding edge to the far side of the holes, punching tolerance included. */
    public Length holeZone() {
        return edgeDistance.plus(holeAcross.half()).plus(punchingTolerance);
    }
}
