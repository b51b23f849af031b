package io.bindprep.catalogue;

import org.jspecify.annotations.Nullable;

/**
 * What a shop measured of how its punch stands; each null where it was not measured.
 *
 * @param depth how much deeper the middle of the row of pins cuts than the settings say; negative for shallower
 * @param side how far pin 1 stands off its place along the bound edge, positive away from the side guide
 * @param skew how much deeper the last pin cuts than pin 1, over the whole row of pins; negative for shallower
 * @param pitch how much longer the whole row of pins is than its pattern says; negative for shorter
 */
public record MeasuredErrors(
        @Nullable Deviation depth,
        @Nullable Deviation side,
        @Nullable Deviation skew,
        @Nullable Deviation pitch) {}
