package io.bindprep.catalogue;

import io.bindprep.unit.Length;
import java.util.Map;

/** The built-in punch of a pattern with what a shop's own may differ in. */
public final class PunchLike {
    private PunchLike() {}

    /** Each null where the punch's file would not say it. */
    public static Punch of(
            Pattern pattern,
            int pins,
            Length firstPin,
            ElementSizes closes,
            Length punchingTolerance,
            MeasuredErrors errors) {
        Punch generic = Catalogue.builtIn().punches().generic(pattern);
        return new Punch(
                "ours",
                pattern.id(),
                pins,
                firstPin,
                generic.depths(),
                generic.capacity(),
                Map.of(),
                null,
                generic.longestEdge(),
                generic.minimumWeb(),
                closes,
                punchingTolerance,
                errors,
                "our own");
    }
}
