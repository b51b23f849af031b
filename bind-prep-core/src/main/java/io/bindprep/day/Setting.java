package io.bindprep.day;

import io.bindprep.wording.Capital;
import java.util.Locale;

/** Settings that an operator makes between jobs, the dearest change first. */
public enum Setting {
    /** Another die, or another punch. */
    DIE,
    /** The depth stop. */
    DEPTH,
    /** Pins to pull or to put back. */
    PINS,
    /** The element's size, with the closer for it. */
    CLOSER,
    /** The side guide. */
    SIDE_GUIDE;

    /** Its name on a sheet, "Side guide". */
    public String label() {
        return Capital.first(name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }
}
