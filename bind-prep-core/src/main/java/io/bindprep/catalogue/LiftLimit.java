package io.bindprep.catalogue;

import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * Limit of a lift of one kind of stock; where both are said, both hold.
 *
 * @param thickness the thickest lift
 * @param sheets most sheets of a lift; null where only the thickness is said
 */
public record LiftLimit(Length thickness, @Nullable Integer sheets) {}
