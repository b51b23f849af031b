package io.bindprep.job;

import io.bindprep.unit.Length;

/**
 * The size a leaf should have.
 *
 * @param name the size's name or "W x H" as given
 */
public record Trim(String name, Length width, Length height) {}
