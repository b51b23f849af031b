package io.bindprep.repair;

import io.bindprep.block.Block;
import io.bindprep.block.Leaf;
import io.bindprep.job.Job;
import io.bindprep.job.PageRange;
import io.bindprep.job.Sides;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Blank pages where a leaf's back stays blank, so that each leaf has two pages in the file. */
public final class BlankBacks {
    private final Set<Integer> after;

    private BlankBacks(List<Integer> after) {
        this.after = new HashSet<>(after);
    }

    /** Pages whose leaf has nothing on its back. */
    public static List<Integer> of(Block block) {
        List<Integer> pages = new ArrayList<>();
        for (Leaf leaf : block.leaves()) {
            if (leaf.recto() != null && leaf.verso() == null) {
                pages.add(leaf.recto());
            }
        }
        return pages;
    }

    /** The job of a document with blank pages put behind these pages: two-sided, with page numbers that moved along. */
    public static Job job(Job job, List<Integer> blanksAfter) {
        if (blanksAfter.isEmpty()) {
            return job;
        }
        BlankBacks blanks = new BlankBacks(blanksAfter);
        return job.renumbered(
                job.sides() == Sides.ONE ? Sides.TWO : job.sides(), range -> Optional.of(blanks.range(range)));
    }

    private PageRange range(PageRange old) {
        return new PageRange(place(old.first()), place(old.last()) + (after.contains(old.last()) ? 1 : 0));
    }

    private int place(int page) {
        return page + (int) after.stream().filter(p -> p < page).count();
    }
}
