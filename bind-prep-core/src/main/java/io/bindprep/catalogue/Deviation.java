package io.bindprep.catalogue;

import io.bindprep.unit.Length;

/**
 * A measured error and how sure it is.
 *
 * @param value the error; its sign is said where it is used
 * @param tolerance how far the measurement may lie off, either way
 */
public record Deviation(Length value, Length tolerance) {}
