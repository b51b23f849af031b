package io.bindprep.job;

import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * Needs of a hanging calendar at its binding edge.
 *
 * @param gap the stretch in the middle without holes and loops, where the hanger sits
 * @param thumbCut the notch by which the hanger is reached; null for none
 */
public record Hanger(Length gap, @Nullable ThumbCut thumbCut) {
    /** A notch so wide along the binding edge and so deep away from it. */
    public record ThumbCut(Length width, Length depth) {}
}
