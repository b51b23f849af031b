package io.bindprep.binding;

import io.bindprep.unit.Length;

/**
 * Distances that print keeps.
 *
 * @param binding minimum distance of print from the binding edge
 * @param punchingTolerance how far a hole may lie off its place, either way
 */
public record Margins(Length binding, Length punchingTolerance) {}
