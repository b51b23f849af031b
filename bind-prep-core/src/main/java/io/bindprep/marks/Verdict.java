package io.bindprep.marks;

/** What becomes of a page when it is punched, best first. */
public enum Verdict {
    /** No mark in the holes, the punched zone or the clear margin. */
    CLEAR,
    /** No hole hit, but a mark between holes or inside the clear margin. */
    TIGHT,
    /** A mark that prints overlaps a hole, grown by the registration tolerance. */
    PUNCHED,
    /** Not analysed whole, so nothing is known to be good. */
    UNREAD
}
