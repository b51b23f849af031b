package io.bindprep.binding;

import io.bindprep.unit.Length;

/**
 * One hole of the row.
 *
 * @param pin the punch's pin that cuts it, numbered from the side guide, from 1
 * @param centre its centre along the binding edge, from the head of the recto (from its left where the leaf is bound at top)
 */
public record Hole(int pin, Length centre) {}
