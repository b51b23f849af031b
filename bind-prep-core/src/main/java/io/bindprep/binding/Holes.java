package io.bindprep.binding;

import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.unit.Length;

/**
 * Holes of a pattern.
 *
 * @param method what they are for
 * @param pattern the pattern's id
 * @param pitchName the trade's name of the pitch ("3:1", "2:1"), else the pattern's id
 * @param pitch centre to centre; the first spacing where a ring pattern has several
 * @param along a hole's size along the binding edge
 * @param across a hole's size away from the binding edge
 * @param round whether a hole is round; else it is rectangular
 */
public record Holes(
        Method method, String pattern, String pitchName, Length pitch, Length along, Length across, boolean round) {
    static Holes of(Pattern pattern) {
        return new Holes(
                pattern.method(),
                pattern.id(),
                pattern.pitchName(),
                pattern.pitch(),
                pattern.holeAlong(),
                pattern.holeAcross(),
                pattern.round());
    }
}
