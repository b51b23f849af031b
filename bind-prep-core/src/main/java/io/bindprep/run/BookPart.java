package io.bindprep.run;

import io.bindprep.binding.Plan;
import io.bindprep.block.Block;
import io.bindprep.paper.Stack;
import io.bindprep.volume.Split;
import java.util.List;

/** Book part bound as one: a copy, or a volume of it. */
public record BookPart(Block block, Stack stack, Plan plan) {
    /** The copy, or the volumes that it is split into. */
    public static List<BookPart> parts(Block block, Stack stack, Plan plan, Split split) {
        return split.volumes().isEmpty()
                ? List.of(new BookPart(block, stack, plan))
                : split.volumes().stream()
                        .map(v -> new BookPart(v.block(), v.stack(), v.plan()))
                        .toList();
    }
}
