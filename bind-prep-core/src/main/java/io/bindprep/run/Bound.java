package io.bindprep.run;

import io.bindprep.binding.Plan;
import io.bindprep.block.Block;
import io.bindprep.paper.Stack;

/** What is bound as one: a copy, or a volume of it. */
public record Bound(Block block, Stack stack, Plan plan) {}
