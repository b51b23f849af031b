package io.bindprep.request;

import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * The leaves of one copy where there is no document: counted, measured, or both.
 *
 * @param leaves leaves between the covers, inserts and tabs included; null where they were not counted
 * @param pages pages that the document will have, printed covers included; null where leaves or a stack say it
 * @param stack thickness of the leaves between the covers, as measured; null where it was not
 */
public record Pile(
        @Nullable Integer leaves,
        @Nullable Integer pages,
        @Nullable Length stack) {
    /** So many leaves between the covers. */
    public static Pile ofLeaves(int leaves) {
        return new Pile(leaves, null, null);
    }

    /** A document that will have so many pages. */
    public static Pile ofPages(int pages) {
        return new Pile(null, pages, null);
    }

    /** Leaves of the job's stock that make a stack of that thickness. */
    public static Pile ofStack(Length stack) {
        return new Pile(null, null, stack);
    }
}
