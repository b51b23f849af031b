package io.bindprep.repair;

import io.bindprep.page.Move;
import io.bindprep.page.PageEdge;
import java.awt.geom.Rectangle2D;
import java.util.Set;

/**
 * Move of one thing of a page while all else stays.
 *
 * @param numbers of what the page paints, as {@link io.bindprep.marks.Painted} counts
 * @param box where it stood, in the binding-edge frame of its page, millimetres
 * @param near whether it stood too near the binding edge itself; else it keeps in line with those that did
 */
public record LoneMove(
        int page, PageEdge bindingEdge, Zone zone, Set<Integer> numbers, Rectangle2D box, double awayMm, boolean near) {
    /** Part of a page where such things stand. */
    public enum Zone {
        HEAD,
        FOOT,
        /** Beside the text, between it and the binding edge. */
        SIDE
    }

    public LoneMove {
        numbers = Set.copyOf(numbers);
    }

    /** The same as a move of content. */
    public Move move() {
        return new Move(bindingEdge, awayMm, 1);
    }
}
