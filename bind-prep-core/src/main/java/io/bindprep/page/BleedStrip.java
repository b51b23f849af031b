package io.bindprep.page;

/**
 * Stretch of bleed to be made beside art that ends too soon, in the binding-edge frame of its page, millimetres.
 *
 * @param endMm where the art ends: below 0 beyond the trim
 * @param sourceMm how much of the art is mirrored from there
 * @param fromMm where the stretch begins along the edge
 * @param toMm where it ends along the edge
 */
public record BleedStrip(double endMm, double sourceMm, double fromMm, double toMm) {}
