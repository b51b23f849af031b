package io.bindprep.binding;

import io.bindprep.unit.Length;

/** A rectangle of paper within a closed element: each side's square and the other's add up to the diagonal's. */
final class Turning {
    private Turning() {}

    /** Returns true if a rectangle of these sides lies within a circle of this diameter without touching it, exactly. */
    static boolean within(Length diameter, Length side, Length other) {
        long d = diameter.units();
        // no element is over a metre, so that squares stay far below the greatest long
        return square(side.units()) + square(other.units()) < square(d);
    }

    /** Limit of the other side of a rectangle with this one; zero where the side alone is too long. */
    static Length limit(Length diameter, Length side) {
        long left = square(diameter.units()) - square(side.units());
        if (left <= 0) {
            return Length.ZERO;
        }
        // rounded up, so that "below it" is decided as exactly as within()
        long root = (long) Math.sqrt(left);
        while (square(root) < left) {
            root++;
        }
        return new Length(root);
    }

    private static long square(long units) {
        return Math.multiplyExact(units, units);
    }
}
