package io.bindprep.job;

import io.bindprep.unit.Length;

/**
 * The sheet that leaves are printed on and cut from.
 *
 * @param name its name or "W x H" as given
 * @param bleed what is printed beyond the trim of each leaf, all round
 * @param gripper what stays blank along one edge of the sheet
 */
public record PressSheet(String name, Length width, Length height, Length bleed, Length gripper) {}
