package io.bindprep.marks;

import java.awt.geom.Rectangle2D;

/**
 * Thing that one operator of a page's content paints, in the binding-edge frame of its page, not cut to a strip.
 *
 * @param number place among the operators of the page, ascending
 * @param box bounds in millimetres: x from the binding edge, y along it
 * @param prints false where it only covers what lies below with white
 * @param fixed whether it is drawn in a way that holds it in its place: through a clip, a mask or a pattern
 */
public record Painted(int number, MarkKind kind, Rectangle2D box, boolean prints, boolean fixed) {}
