package io.bindprep.run;

import io.bindprep.block.Leaf;
import io.bindprep.block.LeafSizes;
import io.bindprep.job.Job;
import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Plans the run of a job: materials, lifts and steps. */
public final class RunPlanner {
    private RunPlanner() {}

    /**
     * The run.
     *
     * @param sizes how large each leaf is cut
     * @param parts the copy, or its volumes in order
     */
    public static Run plan(Job job, LeafSizes sizes, List<BookPart> parts) {
        List<Lift> lifts = lifts(parts);
        List<Fold> folds = parts.stream()
                .flatMap(p -> FoldFinder.folds(job, p.block(), p.plan(), sizes).stream())
                .toList();
        Materials materials = MaterialCount.of(job, sizes, parts);
        long strokes = Math.multiplyExact((long) lifts.size(), (long) job.copies());
        List<Step> steps = new StepWriter(job, materials, folds, parts, lifts, strokes).steps();
        return new Run(materials, folds, lifts, strokes, steps, List.of(Caution.MANUAL, Caution.WASTE_FIRST));
    }

    private static List<Lift> lifts(List<BookPart> parts) {
        List<Lift> lifts = new ArrayList<>();
        for (int volume = 1; volume <= parts.size(); volume++) {
            BookPart part = parts.get(volume - 1);
            int first = 0;
            for (int leaves : part.plan().lifts()) {
                lifts.add(lift(volume, first, part.block().leaves().subList(first, first + leaves)));
                first += leaves;
            }
        }
        return lifts;
    }

    private static Lift lift(int volume, int first, List<Leaf> leaves) {
        BigDecimal thick = BigDecimal.ZERO;
        Integer firstPage = null;
        Integer lastPage = null;
        for (Leaf leaf : leaves) {
            thick = thick.add(leaf.nominalUm());
            firstPage = firstPage == null ? firstOf(leaf.recto(), leaf.verso()) : firstPage;
            Integer last = firstOf(leaf.verso(), leaf.recto());
            lastPage = last == null ? lastPage : last;
        }
        Leaf one = leaves.get(0);
        Stock.Kind kind = one.stock().kind();
        return new Lift(
                volume, first + 1, leaves.size(), one.cover(), kind, Length.ofMicrometres(thick), firstPage, lastPage);
    }

    private static @Nullable Integer firstOf(@Nullable Integer one, @Nullable Integer other) {
        return one != null ? one : other;
    }
}
