package io.bindprep.binding;

import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Ground on which a setting of the depth stop was chosen: the values, without words. */
public sealed interface DepthGround {
    /** The job names it. */
    record Asked(Turns turns) implements DepthGround {}

    /** The punch has no other. */
    record OnlySetting(Turns turns) implements DepthGround {}

    /** Ring mechanisms have their holes there. */
    record RingMechanism() implements DepthGround {}

    /**
     * Weighed by element or stack, turning and content.
     *
     * @param suggested the setting that element or stack suggest
     * @param suggestedTurns how pages turn at that one; null where it is the one that the turning allows
     * @param turns how pages turn at the deepest one that the turning allows
     * @param shallowest whether pages turn freely at none, so that the shallowest was taken
     * @param content what the settings do to the content; null where nobody looked
     */
    record Weighed(
            Suggestion suggestion,
            String suggested,
            @Nullable Turns suggestedTurns,
            Turns turns,
            boolean shallowest,
            @Nullable Content content)
            implements DepthGround {}

    /** Way that a setting is suggested. */
    sealed interface Suggestion {}

    /** The punch says from which stack on its settings suit. */
    record ByStack(Length nominal) implements Suggestion {}

    /** No element is known. */
    record NoElement() implements Suggestion {}

    /**
     * The element's size says how much paper should lie outside the holes.
     *
     * @param largest whether no element takes the whole stack, so that the size is that of the largest
     * @param paper at most so much paper
     * @param share that paper as a share of the size
     */
    record BySize(Length size, boolean largest, Length paper, BigDecimal share, String source) implements Suggestion {}

    /**
     * Turning of the pages at a setting.
     *
     * @param outside paper outside the holes
     * @param below what that must stay below; null where no element is known
     * @param size the element's; null where none is known
     * @param stack the stack that counts
     * @param atMost whether that is the thickest likely one; else the nominal one
     */
    record Turns(
            Length outside,
            @Nullable Length below,
            @Nullable Length size,
            Length stack,
            boolean atMost) {}

    /**
     * Effect of the settings on the content.
     *
     * @param unchecked pages of which nothing is known at the chosen one
     */
    record Content(List<Count> counts, int unchecked) {
        public Content {
            counts = List.copyOf(counts);
        }
    }

    /** Effect of one setting. */
    record Count(String setting, PageCount pages) {}
}
