package io.bindprep.volume;

import io.bindprep.unit.Length;

/** Reason for splitting a book that no element takes, or not: the values, without words. */
public sealed interface SplitReason {
    /** Nothing is known of the thickness that an element takes. */
    record NothingKnown() implements SplitReason {}

    /** No stock of the catalogue is thin enough. */
    record NoThinnerStock() implements SplitReason {}

    /**
     * A stock on which the book stays one.
     *
     * @param stack thickness that an element is chosen by, on that stock
     * @param most what the largest element takes
     */
    record OnThinnerStock(String stock, Length stack, Length most) implements SplitReason {}

    /** So many volumes, the least that fit. */
    record Volumes(int count, Length most) implements SplitReason {}

    /** Even so many volumes would not do. */
    record NoSplit(int mostVolumes) implements SplitReason {}
}
