package io.bindprep.proof;

/**
 * A rectangle, or the ellipse in it, in the binding-edge frame of a page: distances from the binding edge and from the head as
 * the reader sees the page (from its left where it is bound at top or bottom), millimetres.
 */
public record Outline(boolean round, double nearMm, double farMm, double startMm, double endMm) {}
