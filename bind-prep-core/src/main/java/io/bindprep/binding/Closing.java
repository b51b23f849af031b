package io.bindprep.binding;

import io.bindprep.catalogue.ElementSizes;
import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * Cutting and closing of the element.
 *
 * @param loops loops of the element to cut, 0 where the element has none
 * @param closer what the closer is set to; null where nothing is closed or no element fits
 * @param takes the sizes of element that the punch's closer takes; null where no bound is known
 */
public record Closing(
        int loops, @Nullable Length closer, @Nullable ElementSizes takes) {}
