package io.bindprep.report.xjdf;

import io.bindprep.binding.Plan;
import io.bindprep.block.Leaf;
import io.bindprep.check.Report;
import io.bindprep.paper.Stack;
import io.bindprep.volume.Volume;
import java.util.List;

/**
 * Part bound by itself: the book, or each of the volumes that it is split into.
 *
 * @param id of its product
 * @param name for people; empty where the book is one
 */
record BoundBook(String id, String name, List<Leaf> leaves, Stack stack, Plan plan) {
    static List<BoundBook> of(Report report) {
        List<Volume> volumes = report.split().volumes();
        if (volumes.isEmpty()) {
            return List.of(new BoundBook("Book", "", report.block().leaves(), report.stack(), report.plan()));
        }
        return volumes.stream()
                .map(v -> new BoundBook(
                        "Volume" + v.number(),
                        "volume " + v.number() + " of " + volumes.size() + ", pages " + v.firstPage() + "-"
                                + v.lastPage() + (v.bookmark().isEmpty() ? "" : ", from \"" + v.bookmark() + "\""),
                        v.block().leaves(),
                        v.stack(),
                        v.plan()))
                .toList();
    }
}
