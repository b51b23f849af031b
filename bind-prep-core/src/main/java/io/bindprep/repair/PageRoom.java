package io.bindprep.repair;

import io.bindprep.marks.Mark;
import io.bindprep.page.PageEdge;
import org.jspecify.annotations.Nullable;

/**
 * Room for one page's content to move.
 *
 * @param page page number from 1
 * @param acrossMm extent of the trimmed page away from its binding edge
 * @param near the mark nearest the binding edge; null where nothing but background is near it
 * @param outer the mark nearest the outer edge, measured from there, that does not run off the page; null where nothing
 *     is near it
 * @param bleeds whether something runs off the page at the outer edge
 * @param unchecked why the page could not be analysed whole; null where it was
 */
public record PageRoom(
        int page,
        PageEdge bindingEdge,
        double acrossMm,
        @Nullable Mark near,
        @Nullable Mark outer,
        boolean bleeds,
        @Nullable String unchecked) {
    /** Least distance of the nearest mark from the binding edge, millimetres; infinite where there is none. */
    public double nearMm() {
        return least(near);
    }

    /** Least distance of the outermost mark from the outer edge, millimetres; infinite where none is near it. */
    public double outerMm() {
        return least(outer);
    }

    // a mark read from dots may begin a dot nearer, and has to be clear all the same
    private static double least(@Nullable Mark mark) {
        return mark == null
                ? Double.POSITIVE_INFINITY
                : Math.max(0, mark.nearMm() - mark.stage().coarseMm());
    }
}
