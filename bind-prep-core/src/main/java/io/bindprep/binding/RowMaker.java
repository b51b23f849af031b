package io.bindprep.binding;

import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Hanger;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Lays a punch's pins over a binding edge.
 *
 * <p>With a movable guide the row is centred (XJDF 2.2, Appendix F) with as many whole holes as leave the minimum web at
 * both ends; pin 1 cuts the first, or, where that leaves a pin stuck, the pin that leaves the fewest. With a fixed guide
 * the pins stand where they stand. Pins that were measured to be off their pattern cut where they were found. A pin that would touch the sheet without leaving a whole, well-webbed hole must go. So
 * does one that stands off the sheet by less than a pitch: a sheet that is cut long or slips from the guide would be
 * nicked (our own guard, no source). Pins further out may stay. Pins over a hanger's gap go in pairs from both ends of
 * the row, so that a symmetric row stays so.
 */
final class RowMaker {
    private final Pattern pattern;
    private final Punch punch;
    private final Length edge;
    private final Length minimumWeb;
    private final @Nullable Hanger hanger;
    private final Length half;
    private final MeasuredPins stand;

    RowMaker(Pattern pattern, Punch punch, Length edge, Length minimumWeb, @Nullable Hanger hanger) {
        this.pattern = pattern;
        this.punch = punch;
        this.edge = edge;
        this.minimumWeb = minimumWeb;
        this.hanger = hanger;
        this.half = pattern.holeAlong().half();
        this.stand = new MeasuredPins(pattern, punch);
    }

    /** Number of whole holes of a centred row, 0 where not even one keeps its web (or a fixed set does not fit). */
    static int count(Pattern pattern, Length edge, Length minimumWeb, int pins) {
        Length room = edge.minus(pattern.holeAlong()).minus(minimumWeb.times(2));
        if (room.compareTo(Length.ZERO) < 0) {
            return 0;
        }
        if (!pattern.repeating()) {
            int holes = pattern.spacings().size() + 1;
            return pattern.span(holes).compareTo(room) <= 0 && pins >= holes ? holes : 0;
        }
        return (int) Math.min(pins, room.units() / pattern.pitch().units() + 1);
    }

    /** The row; without a hole where none fits. */
    HoleRow row() {
        Length fixed = punch.firstPin();
        if (fixed != null) {
            return from(fixed.plus(stand.side().value()));
        }
        int count = count(pattern, edge, minimumWeb, punch.pins());
        if (count == 0) {
            return new HoleRow(edge, List.of(), List.of(), List.of(), Length.ZERO);
        }
        Length room = edge.minus(pattern.holeAlong()).minus(minimumWeb.times(2));
        if (stand.at(count).compareTo(room) > 0) {
            count = pattern.repeating() ? count - 1 : 0;
        }
        if (count == 0) {
            return new HoleRow(edge, List.of(), List.of(), List.of(), Length.ZERO);
        }
        Length first = edge.minus(stand.at(count)).half();
        HoleRow best = from(first);
        for (int pin = 2; fixed(best) > 0 && pin + count - 1 <= punch.pins(); pin++) {
            HoleRow other = from(first.minus(stand.at(pin)));
            best = fixed(other) < fixed(best) ? other : best;
        }
        return best;
    }

    private static int fixed(HoleRow row) {
        Gap gap = row.gap();
        return row.fixedPins().size() + (gap == null ? 0 : gap.fixedPins().size());
    }

    /** The row with pin 1 at this place. */
    private HoleRow from(Length first) {
        List<Hole> holes = new ArrayList<>();
        List<Integer> pulled = new ArrayList<>();
        List<Integer> fixed = new ArrayList<>();
        for (int pin = 1; pin <= punch.pins(); pin++) {
            Length centre = first.plus(stand.at(pin));
            // paper lies from 0 to edge: touching the end counts as touching
            Length off = web(centre, half.times(-1), edge).times(-1);
            if (web(centre, half, edge).compareTo(minimumWeb) >= 0) {
                holes.add(new Hole(pin, centre));
            } else if (punch.canPull(pin) && off.compareTo(pattern.pitch()) < 0) {
                pulled.add(pin);
            } else if (off.compareTo(Length.ZERO) <= 0) {
                fixed.add(pin);
            }
        }
        Length web = minimumWeb(pattern, edge, holes);
        Gap gap = hanger == null ? null : gap(hanger, holes, pulled);
        Length guideOff = punch.firstPin() == null ? stand.side().value() : Length.ZERO;
        HoleRow row = new HoleRow(edge, holes, pulled, fixed, web, guideOff, gap);
        return row.measured(stand.slant(row), stand.stretch(row));
    }

    /** Takes the holes over the gap out of the row and adds their pins to those pulled. */
    private Gap gap(Hanger asked, List<Hole> holes, List<Integer> pulled) {
        Length width = width(asked, minimumWeb);
        Set<Integer> over = new TreeSet<>();
        for (int i = 0; i < holes.size(); i++) {
            Length fromMiddle = holes.get(i).centre().times(2).minus(edge).abs();
            if (fromMiddle.minus(pattern.holeAlong()).compareTo(width) < 0) {
                over.add(i);
                over.add(holes.size() - 1 - i);
            }
        }
        List<Hole> going = over.stream().map(holes::get).toList();
        List<Integer> out = new ArrayList<>();
        List<Integer> fixed = new ArrayList<>();
        for (Hole hole : going) {
            (punch.canPull(hole.pin()) ? out : fixed).add(hole.pin());
        }
        holes.removeIf(h -> out.contains(h.pin()));
        pulled.addAll(out);
        pulled.sort(null);
        Length start = edge.minus(width).half();
        Hanger.ThumbCut cut = asked.thumbCut();
        return new Gap(
                start, start.plus(width), out, fixed, cut == null ? null : new Gap.ThumbCut(cut.width(), cut.depth()));
    }

    /** The gap's width: what is asked for, or the thumb cut with the minimum web on both sides. */
    static Length width(Hanger asked, Length minimumWeb) {
        Hanger.ThumbCut cut = asked.thumbCut();
        Length beside = cut == null ? Length.ZERO : cut.width().plus(minimumWeb.times(2));
        return beside.max(asked.gap());
    }

    static HoleRow centred(Pattern pattern, Length edge, int count) {
        List<Hole> holes = new ArrayList<>();
        Length first = edge.minus(pattern.span(count)).half();
        for (int pin = 1; pin <= count; pin++) {
            holes.add(new Hole(pin, first.plus(pattern.span(pin))));
        }
        return new HoleRow(edge, holes, List.of(), List.of(), minimumWeb(pattern, edge, holes));
    }

    private static Length minimumWeb(Pattern pattern, Length edge, List<Hole> holes) {
        Length least = edge;
        for (Hole hole : holes) {
            least = least.min(web(hole.centre(), pattern.holeAlong().half(), edge));
        }
        return least;
    }

    /** Paper between a hole and the nearer end of the sheet; negative where it is cut open. */
    private static Length web(Length centre, Length half, Length edge) {
        return centre.min(edge.minus(centre)).minus(half);
    }
}
