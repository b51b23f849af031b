package io.bindprep.sheet;

import io.bindprep.binding.Plan;

/**
 * The binding edge with its holes, to be drawn at true size.
 *
 * @param top whether the leaf is bound at its top, so that the row runs from the left
 */
public record EdgeDrawing(Plan plan, boolean top) {
    /** Where the row starts, as the operator says it. */
    String start() {
        return top ? "left" : "head";
    }
}
