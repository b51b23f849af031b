package io.bindprep.catalogue;

import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A punch.
 *
 * @param id its name
 * @param pattern the id of the pattern it cuts
 * @param pins how many pins it has, numbered from the side guide, from 1
 * @param firstPin side guide to the centre of pin 1; null where the guide moves, so that a row can be centred
 * @param depths the settings of its depth stop, at least one, shallow to deep
 * @param capacity thickness it takes at once, of any kind of stock
 * @param limits what else holds for a lift of one kind of stock
 * @param pullable the pins that can be taken out; null for all
 * @param longestEdge the longest binding edge it takes
 * @param minimumWeb least paper that is left between a hole and the end of the sheet
 * @param elements the elements that its closer takes; null where no bound is known
 * @param punchingTolerance how far its holes were measured to lie off their place; null where nobody measured it
 * @param measured measured errors of how it stands; null for none
 */
public record Punch(
        String id,
        String pattern,
        int pins,
        @Nullable Length firstPin,
        List<DepthSetting> depths,
        Length capacity,
        Map<Stock.Kind, LiftLimit> limits,
        @Nullable List<Integer> pullable,
        Length longestEdge,
        Length minimumWeb,
        @Nullable ElementSizes elements,
        @Nullable Length punchingTolerance,
        @Nullable MeasuredErrors measured,
        String source) {
    public Punch {
        if (depths.isEmpty()) {
            throw new IllegalArgumentException("the punch " + id + " has no depth setting");
        }
        depths = depths.stream()
                .sorted(Comparator.comparing(DepthSetting::centre).thenComparing(DepthSetting::name))
                .toList();
        limits = Map.copyOf(limits);
        pullable = pullable == null ? null : List.copyOf(pullable);
    }

    /** The same punch under another name. */
    public Punch named(String name) {
        return new Punch(
                name,
                pattern,
                pins,
                firstPin,
                depths,
                capacity,
                limits,
                pullable,
                longestEdge,
                minimumWeb,
                elements,
                punchingTolerance,
                measured,
                source);
    }

    /** The same punch, its pins where its pattern says. */
    public Punch unmeasured() {
        return measured(depths, null, source);
    }

    /** The same punch with what was measured of it. */
    public Punch measured(List<DepthSetting> settings, @Nullable MeasuredErrors errors, String from) {
        return new Punch(
                id,
                pattern,
                pins,
                firstPin,
                settings,
                capacity,
                limits,
                pullable,
                longestEdge,
                minimumWeb,
                elements,
                punchingTolerance,
                errors,
                from);
    }

    /** Returns true if a pin can be taken out. */
    public boolean canPull(int pin) {
        return pullable == null || pullable.contains(pin);
    }

    /** Limit of a lift of this kind of stock. */
    public LiftLimit limit(Stock.Kind kind) {
        return limits.getOrDefault(kind, new LiftLimit(capacity, null));
    }

    /** The setting that comes nearest to a centre, as a rule the pattern's own; the shallower of two as near. */
    public DepthSetting depthNearest(Length centre) {
        return depths.stream()
                .min(Comparator.comparing(d -> d.centre().minus(centre).abs()))
                .orElseThrow();
    }
}
