package io.bindprep.block;

import io.bindprep.job.PageRange;
import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import org.jspecify.annotations.Nullable;

/**
 * Leaves of one kind that follow each other.
 *
 * @param key the job key that asks for them, for messages
 * @param pages their pages; of a blank leaf the page it stands before
 * @param blank whether it is one blank leaf
 */
record LeafGroup(
        String key, PageRange pages, boolean blank, Leaf.Role role, Stock stock, int layers, Length extension) {
    static LeafGroup plain(PageRange pages, Stock stock) {
        return new LeafGroup("", pages, false, Leaf.Role.TEXT, stock, 1, Length.ZERO);
    }

    LeafGroup of(int first, int last) {
        return new LeafGroup(key, new PageRange(first, last), blank, role, stock, layers, extension);
    }

    Leaf leaf(@Nullable Integer recto, @Nullable Integer verso) {
        return new Leaf(role, stock, recto, verso, layers, extension);
    }
}
