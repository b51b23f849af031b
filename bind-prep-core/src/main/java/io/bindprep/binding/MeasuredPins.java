package io.bindprep.binding;

import io.bindprep.catalogue.Deviation;
import io.bindprep.catalogue.MeasuredErrors;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * Places of a punch's pins: on its pattern, with the errors that were measured.
 *
 * <p>Errors are taken to grow evenly along the row of pins, as those of a die, a stretched sheet and a slanting back stop
 * do. The depth settings hold for the middle of the whole row.
 */
record MeasuredPins(Pattern pattern, Punch punch) {
    private static final Deviation NONE = new Deviation(Length.ZERO, Length.ZERO);

    /** Axis of pin 1 to centre of a pin. */
    Length at(int pin) {
        Length span = pattern.span(pin);
        return span.plus(share(pitch().value(), span));
    }

    /** Distance of pin 1 from its place, away from the side guide. */
    Deviation side() {
        MeasuredErrors errors = punch.measured();
        return measured(errors == null ? null : errors.side());
    }

    /** Excess length of the whole row of pins. */
    Deviation pitch() {
        MeasuredErrors errors = punch.measured();
        return measured(errors == null ? null : errors.pitch());
    }

    private Deviation depth() {
        MeasuredErrors errors = punch.measured();
        return measured(errors == null ? null : errors.depth());
    }

    private Deviation skew() {
        MeasuredErrors errors = punch.measured();
        return measured(errors == null ? null : errors.skew());
    }

    private static Deviation measured(@Nullable Deviation deviation) {
        return deviation == null ? NONE : deviation;
    }

    /** Excess depth of the punch over its setting in the middle of a row of holes. */
    Length deeper(HoleRow row) {
        return row.holes().isEmpty() ? depth().value() : depth().value().plus(share(skew().value(), offMiddle(row)));
    }

    /** Excess depth of the last hole of a row over its first. */
    Length slant(HoleRow row) {
        return row.holes().isEmpty() ? Length.ZERO : share(skew().value(), used(row));
    }

    /** Excess length of a row of holes over its pattern, first centre to last. */
    Length stretch(HoleRow row) {
        return row.holes().isEmpty() ? Length.ZERO : share(pitch().value(), used(row));
    }

    /**
     * Worst error of a hole's place for all that was measured: across by the slant of the row,
     * which no setting takes out, and by the tolerances of depth and skew; along by those of side and pitch.
     */
    Length leftOpen(HoleRow row) {
        if (row.holes().isEmpty()) {
            return Length.ZERO;
        }
        Length reach = used(row).half().plus(offMiddle(row).abs());
        Length across = slant(row).abs().half().plus(depth().tolerance()).plus(share(skew().tolerance(), reach));
        Length along = side().tolerance().plus(share(pitch().tolerance(), pattern.span(last(row))));
        return across.max(along);
    }

    // from the middle of the whole row of pins to that of the holes
    private Length offMiddle(HoleRow row) {
        return pattern.span(first(row))
                .plus(pattern.span(last(row)))
                .minus(whole())
                .half();
    }

    private Length used(HoleRow row) {
        return pattern.span(last(row)).minus(pattern.span(first(row)));
    }

    private static int first(HoleRow row) {
        return row.holes().get(0).pin();
    }

    private static int last(HoleRow row) {
        return row.holes().get(row.holes().size() - 1).pin();
    }

    private Length whole() {
        return pattern.span(punch.pins());
    }

    /** The share of an error over the whole row of pins that falls to a part of it. */
    private Length share(Length error, Length part) {
        return whole().units() == 0
                ? Length.ZERO
                : new Length(Math.round((double) error.units() * part.units() / whole().units()));
    }
}
