package io.bindprep.block;

import java.util.List;

/**
 * A copy's leaves in order, covers included, and the place of each page.
 *
 * @param leaves front cover, leaves, back cover, in reading order
 * @param places by page, page n at index n - 1
 * @param addedBlankBacks pages after which a blank back was put so that an insert or cover starts on a fresh leaf
 */
public record Block(List<Leaf> leaves, List<PagePlace> places, List<Integer> addedBlankBacks) {
    public Block {
        leaves = List.copyOf(leaves);
        places = List.copyOf(places);
        addedBlankBacks = List.copyOf(addedBlankBacks);
    }

    /** Sheets that go through the printer for one copy, printed covers included. */
    public int printedSheets() {
        return (int) leaves.stream().filter(Leaf::printed).count();
    }

    /** Leaves without the covers. */
    public int bodyLeaves() {
        return (int) leaves.stream().filter(l -> !l.cover()).count();
    }

    /** Covers, printed or blank. */
    public int covers() {
        return (int) leaves.stream().filter(Leaf::cover).count();
    }
}
