package io.bindprep.binding;

import io.bindprep.unit.Length;

/**
 * Skew of a sheet in the punch up to which the binding no longer works.
 *
 * <p>Derived: where one end of a sheet stands off the back stop, its holes lie on a slant, nearer the binding edge towards
 * that end. In a jogged stack the wire thickness then has the hole's size across less the rise to pass through, and the paper
 * outside the last hole is less by the rise. So the rise along the row may be no more than the hole's size across less
 * the wire thickness, and no more than the paper outside the hole; two sheets skewed the opposite ways are no further apart. The
 * shift along the edge is of second order (under 0.1 mm) and left out.
 *
 * @param rise what the hole row may slant, first centre to last
 * @param over first centre to last centre
 * @param wireThickness wire thickness that passes the holes
 * @param wireThicknessSource where that comes from
 */
public record Skew(Length rise, Length over, Length wireThickness, String wireThicknessSource) {
    /** The same as an angle, degrees. */
    public double degrees() {
        return Math.toDegrees(Math.atan2(rise.units(), over.units()));
    }

    /** The rise from end to end of an edge of that length, in millimetres. */
    public double riseOverMm(Length edge) {
        return rise.mm() * edge.units() / over.units();
    }
}
