package io.bindprep.binding;

import io.bindprep.unit.Length;

/** A rectangle of paper within a closed element: each side's square and the other's add up to the diagonal's. */
final class Turning {
    private Turning() {}

    /** Whether a rectangle of these sides lies within a circle of this diameter without touching it, exactly. */
    static boolean within(Length diameter, Length side, Length other) {
        long d = diameter.units();
        // no element is over a metre, so that squares stay far below the greatest long
        return square(side.units()) + square(other.units()) < square(d);
    }

    /** The other side of a rectangle with this one that just touches the circle; zero where the side alone is too long. */
    static Length limit(Length diameter, Length side) {
        long left = square(diameter.units()) - square(side.units());
        return new Length(left <= 0 ? 0 : (long) Math.sqrt(left));
    }

    private static long square(long units) {
        return Math.multiplyExact(units, units);
    }
}
