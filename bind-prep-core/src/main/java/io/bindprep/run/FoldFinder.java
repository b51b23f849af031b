package io.bindprep.run;

import io.bindprep.binding.Plan;
import io.bindprep.block.Block;
import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.SpecialLeaves;
import io.bindprep.job.SpecialLeaves.FoldOut;
import io.bindprep.paper.Sheet;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds how the leaves that fold out are folded, alike ones together. */
final class FoldFinder {
    private FoldFinder() {}

    private record Alike(Length flat, int panels, Length allowance) {}

    static List<Fold> folds(Job job, Block block, Plan plan, LeafSizes sizes) {
        boolean top = job.bindingEdge() == BindingEdge.TOP;
        Map<Alike, List<Integer>> found = new LinkedHashMap<>();
        for (Leaf leaf : block.leaves()) {
            Integer page = leaf.recto();
            if (leaf.role() != Leaf.Role.FOLD_OUT || page == null) {
                continue;
            }
            Sheet sheet = sizes.of(leaf);
            Length allowance =
                    job.special().foldOut(page).map(FoldOut::allowance).orElse(SpecialLeaves.FOLD_ALLOWANCE);
            List<Integer> pages = found.computeIfAbsent(
                    new Alike(top ? sheet.height() : sheet.width(), leaf.layers(), allowance), a -> new ArrayList<>());
            pages.add(page);
            if (leaf.verso() != null) {
                pages.add(leaf.verso());
            }
        }
        Length book = top ? sizes.height() : sizes.width();
        List<Fold> folds = new ArrayList<>();
        found.forEach(
                (a, pages) -> folds.add(Fold.of(pages, a.flat(), a.panels(), book, a.allowance(), plan.holeZone())));
        return folds;
    }
}
