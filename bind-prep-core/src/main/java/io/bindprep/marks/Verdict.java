package io.bindprep.marks;

/** Verdict of a page, best first. */
public enum Verdict {
    /** No mark in the holes, the zone of the holes or the margin. */
    CLEAR,
    /** No hole hit, but a mark between holes or inside the margin. */
    TIGHT,
    /** A mark that prints overlaps a hole, grown by the tolerance. */
    HIT,
    /** Not analysed whole, so nothing is known to be good. */
    UNCHECKED
}
