package io.bindprep.check;

import io.bindprep.binding.Plan;
import java.util.List;

/**
 * Effect of another way to punch.
 *
 * @param plan the pitch at one setting of the depth stop, with its element
 * @param chosen whether it is the report's plan
 * @param hit pages whose content the holes would cut, ascending
 * @param tight pages with matter too near, ascending
 * @param unchecked pages of which nothing is known, ascending
 */
public record WhatIf(Plan plan, boolean chosen, List<Integer> hit, List<Integer> tight, List<Integer> unchecked) {
    public WhatIf {
        hit = List.copyOf(hit);
        tight = List.copyOf(tight);
        unchecked = List.copyOf(unchecked);
    }
}
