package io.bindprep.binding;

/**
 * Why something was decided as it was.
 *
 * @param topic what was decided
 * @param text what was compared, the numbers and their source, as one sentence without a full stop
 */
public record Reason(Topic topic, String text) {
    /** Topics of the decisions, in their order. */
    public enum Topic {
        PITCH,
        ELEMENT,
        DEPTH,
        ROW,
        PINS,
        HANGER,
        FEED,
        SKEW,
        LIFTS,
        CLOSER,
        MARGIN
    }
}
