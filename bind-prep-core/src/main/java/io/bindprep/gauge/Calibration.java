package io.bindprep.gauge;

import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Deviation;
import io.bindprep.catalogue.Punch;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;

/**
 * Errors of a punch by the readings of a test sheet. Tolerances are worst cases: every reading off by its error, the one
 * way or the other.
 *
 * @param punch the punch with its measured errors, to be written to its file
 * @param setting the depth setting that was punched, as it was described before
 * @param edge binding edge to hole centre in the middle of the row
 * @param side how far the first hole lies off its place, positive away from the side guide
 * @param skew how much deeper the last hole is than the first
 * @param pitch how much longer first to last hole is than the pattern says
 * @param row first centre to last centre by the pattern
 * @param open how far off its planned place a hole of this row may lie at worst, by all that was measured
 * @param readingError how far each reading may lie off
 * @param byRule whether a rule measured everything, so that no bar was read
 * @param measures units of its words
 */
public record Calibration(
        Punch punch,
        DepthSetting setting,
        Deviation edge,
        Deviation side,
        Deviation skew,
        Deviation pitch,
        Length row,
        Length open,
        Length readingError,
        boolean byRule,
        Measures measures) {}
