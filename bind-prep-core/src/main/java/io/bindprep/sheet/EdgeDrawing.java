package io.bindprep.sheet;

import io.bindprep.binding.Plan;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Terms;

/**
 * The binding edge with its holes, to be drawn at true size.
 *
 * @param top whether the leaf is bound at its top, so that the row runs from the left
 * @param left whether it is bound at its left
 * @param measures units of its words
 */
public record EdgeDrawing(Plan plan, boolean top, boolean left, Measures measures) {
    /**
     * The side of a punched front leaf that lies up on the drawing, its {@link #start} at the guide: with the binding edge
     * away from you, a leaf bound at its left has its head at the left only face down.
     */
    String face() {
        return left ? "FACE DOWN" : "FACE UP";
    }

    /** Start of the row, as the operator says it. */
    String start() {
        return top ? "left" : "head";
    }

    /** Words below the drawing: its lines, and the lengths that it is drawn by. */
    String caption() {
        String lines = "Dashed line: " + Terms.HOLE_ZONE + " " + measures.mark(plan.holeZone()) + ". Dotted line: "
                + Terms.BINDING_MARGIN + " " + measures.mark(plan.bindingMargin()) + ".";
        return plan.row().holes().isEmpty()
                ? lines
                : lines + " Pitch " + measures.exact(plan.pitch()) + ", edge "
                        + measures.size(plan.row().length()) + ", minimum paper at the ends "
                        + measures.mark(plan.row().minimumWeb()) + ".";
    }
}
