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
 * @param holes the pattern's holes
 * @param punch the punch's id
 * @param chosen the smallest element that takes the stack
 * @param edgeDistance binding edge to hole centre
 * @param depth the setting of the depth stop that gives it
 * @param row where the holes lie
 * @param lifts sheets in each lift of one copy, in order
 * @param closing how the element is cut and closed
 * @param margins what print keeps from the binding edge and from the holes
 * @param skew how skewed a sheet may sit in the punch; null where that is not known
 * @param because each decision with its numbers and source
 */
public record Plan(
        Holes holes,
        String punch,
        ElementChoice chosen,
        Length edgeDistance,
        Depth depth,
        HoleRow row,
        List<Integer> lifts,
        Closing closing,
        Margins margins,
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
        return new Plan(holes, punch, chosen, edgeDistance, settled, row, lifts, closing, margins, skew, reasons);
    }

    /** Method that the holes are for. */
    public Method method() {
        return holes.method();
    }

    /** Hole pattern's id. */
    public String pattern() {
        return holes.pattern();
    }

    /** The trade's name of the pitch ("3:1", "2:1"), else the pattern's id. */
    public String pitchName() {
        return holes.pitchName();
    }

    /** Centre to centre; the first spacing where a ring pattern has several. */
    public Length pitch() {
        return holes.pitch();
    }

    /** The hole's size along the binding edge. */
    public Length holeAlong() {
        return holes.along();
    }

    /** The hole's size away from the binding edge. */
    public Length holeAcross() {
        return holes.across();
    }

    /** Returns true if the hole is round; else it is rectangular. */
    public boolean round() {
        return holes.round();
    }

    /** Loops of the element to cut, 0 where the element has none. */
    public int loops() {
        return closing.loops();
    }

    /** Size that the closer is set to; null where nothing is closed or no element fits. */
    public @Nullable Length closer() {
        return closing.closer();
    }

    /** Sizes of element that the punch's closer takes; null where no bound is known. */
    public @Nullable ElementSizes closerTakes() {
        return closing.takes();
    }

    /** Minimum distance of print from the binding edge. */
    public Length bindingMargin() {
        return margins.binding();
    }

    /** Distance that a hole may lie off its place, either way. */
    public Length punchingTolerance() {
        return margins.punchingTolerance();
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
        return loops() == 0 ? List.of() : row.runs();
    }

    /** Returns true if every leaf must go into the punch with the same end to the side guide. */
    public boolean sameEndToGuide() {
        return row.offset().compareTo(punchingTolerance()) > 0;
    }

    /** Binding edge to the far side of the holes, tolerance included. */
    public Length holeZone() {
        return edgeDistance.plus(holeAcross().half()).plus(punchingTolerance());
    }
}
