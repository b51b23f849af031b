package io.bindprep.binding;

import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays a punch's pins over a bound edge.
 *
 * <p>With a movable guide the row is centred (XJDF 2.2, Appendix F) with as many whole holes as leave the least web at
 * both ends; pin 1 cuts the first. With a fixed guide the pins stand where they stand. A pin that would touch the sheet
 * without leaving a whole, well-webbed hole must go. So does one that stands off the sheet by less than a pitch: a sheet
 * that is cut long or slips from the guide would be nicked (our own guard, no source). Pins further out may stay.
 */
final class RowMaker {
    private RowMaker() {}

    /** How many whole holes a centred row has, 0 where not even one keeps its web (or a fixed set does not fit). */
    static int count(Pattern pattern, Length edge, Length leastWeb, int pins) {
        Length room = edge.minus(pattern.holeAlong()).minus(leastWeb.times(2));
        if (room.compareTo(Length.ZERO) < 0) {
            return 0;
        }
        if (!pattern.repeating()) {
            int holes = pattern.spacings().size() + 1;
            return pattern.span(holes).compareTo(room) <= 0 && pins >= holes ? holes : 0;
        }
        return (int) Math.min(pins, room.units() / pattern.pitch().units() + 1);
    }

    static HoleRow row(Pattern pattern, Punch punch, Length edge) {
        Length fixed = punch.firstPin();
        Length first = fixed != null
                ? fixed
                : edge.minus(pattern.span(count(pattern, edge, punch.leastWeb(), punch.pins())))
                        .half();
        List<Hole> holes = new ArrayList<>();
        List<Integer> pulled = new ArrayList<>();
        List<Integer> stuck = new ArrayList<>();
        Length half = pattern.holeAlong().half();
        for (int pin = 1; pin <= punch.pins(); pin++) {
            Length axis = first.plus(pattern.span(pin));
            Length web = web(axis, half, edge);
            // paper lies from 0 to edge: touching the end counts as touching
            boolean touches = axis.plus(half).compareTo(Length.ZERO) >= 0
                    && axis.minus(half).compareTo(edge) <= 0;
            if (web.compareTo(punch.leastWeb()) >= 0) {
                holes.add(new Hole(pin, axis));
            } else if (punch.canPull(pin)
                    && (touches || axis.minus(half).minus(edge).compareTo(pattern.pitch()) < 0)) {
                pulled.add(pin);
            } else if (touches) {
                stuck.add(pin);
            }
        }
        return new HoleRow(edge, holes, pulled, stuck, leastWeb(pattern, edge, holes));
    }

    static HoleRow centred(Pattern pattern, Length edge, int count) {
        List<Hole> holes = new ArrayList<>();
        Length first = edge.minus(pattern.span(count)).half();
        for (int pin = 1; pin <= count; pin++) {
            holes.add(new Hole(pin, first.plus(pattern.span(pin))));
        }
        return new HoleRow(edge, holes, List.of(), List.of(), leastWeb(pattern, edge, holes));
    }

    private static Length leastWeb(Pattern pattern, Length edge, List<Hole> holes) {
        Length least = edge;
        for (Hole hole : holes) {
            Length web = web(hole.axis(), pattern.holeAlong().half(), edge);
            least = web.compareTo(least) < 0 ? web : least;
        }
        return least;
    }

    /** Paper between a hole and the nearer end of the sheet; negative where it is cut open. */
    private static Length web(Length axis, Length half, Length edge) {
        Length near = axis.minus(half);
        Length far = edge.minus(axis).minus(half);
        return near.compareTo(far) < 0 ? near : far;
    }
}
