package io.bindprep.volume;

import io.bindprep.paper.Stock;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The ways out where no element takes the stack.
 *
 * @param volumes two or more, in order; empty where the book stays one or no split helps
 * @param thinner a stock of the catalogue on which the book would stay one; null for none
 * @param because how they came about
 */
public record Split(List<Volume> volumes, @Nullable Stock thinner, List<SplitReason> because) {
    /** The book stays one. */
    public static final Split NONE = new Split(List.of(), null, List.of());

    public Split {
        volumes = List.copyOf(volumes);
        because = List.copyOf(because);
    }
}
