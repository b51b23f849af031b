package io.bindprep.run;

import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * Lift: leaves that go into the punch at once.
 *
 * @param volume the volume it belongs to, from 1; 1 where the book is not split
 * @param firstLeaf its first leaf in the volume, covers counted, from 1
 * @param leaves how many leaves
 * @param cover whether it is of covers
 * @param kind what the punch meets
 * @param thickness by the nominal calipers
 * @param firstPage the first page printed on it; null where it is blank
 * @param lastPage the last page printed on it; null where it is blank
 */
public record Lift(
        int volume,
        int firstLeaf,
        int leaves,
        boolean cover,
        Stock.Kind kind,
        Length thickness,
        @Nullable Integer firstPage,
        @Nullable Integer lastPage) {}
