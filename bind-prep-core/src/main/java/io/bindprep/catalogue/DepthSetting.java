package io.bindprep.catalogue;

import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * One setting of a punch's depth stop that the operator can dial.
 *
 * @param name how the punch calls it ("shallow", "3")
 * @param centre binding edge to hole centre that it gives
 * @param fromStack the stack from which on the shop takes it; null where it goes by the element
 * @param source where the centre comes from
 */
public record DepthSetting(
        String name, Length centre, @Nullable Length fromStack, String source) {
    /** A setting that is taken by the element. */
    public DepthSetting(String name, Length centre, String source) {
        this(name, centre, null, source);
    }
}
