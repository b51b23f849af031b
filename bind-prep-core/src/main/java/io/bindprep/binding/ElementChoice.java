package io.bindprep.binding;

import io.bindprep.catalogue.Element;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The element that takes a stack.
 *
 * @param element null where none takes it or none is known
 * @param sheets sheets of 20 lb bond as thick as the stack, rounded up; null where the element goes by its size alone
 * @param nearLimit whether the stack is in the part of the element's published range that only some charts give it
 * @param mayNotClose whether the thickest likely stack does not close in it at all, clearance or not
 * @param straddles the sizes that the likely range lies between, smaller first; empty where it is settled
 * @param measure a pack to measure where the range does not settle it; null where it is settled
 */
public record ElementChoice(
        @Nullable Element element,
        @Nullable Integer sheets,
        boolean nearLimit,
        boolean mayNotClose,
        List<Element> straddles,
        @Nullable PackMeasure measure) {
    public ElementChoice {
        straddles = List.copyOf(straddles);
    }
}
