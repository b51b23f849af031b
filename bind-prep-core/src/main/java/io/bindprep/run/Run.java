package io.bindprep.run;

import java.util.List;

/**
 * The run: what it needs, how it is punched, the steps in trade order.
 *
 * @param folds how leaves that fold out are folded in; empty where there are none
 * @param lifts of one copy in order, volume after volume
 * @param strokes of the punch for all copies: leaves copy by copy, covers of all copies of a volume together by stock
 * @param volumeSteps the steps at the punch and after it for each volume alone; empty where the book is not split
 */
public record Run(
        Materials materials,
        List<Fold> folds,
        List<Lift> lifts,
        long strokes,
        List<Step> steps,
        List<List<Step>> volumeSteps,
        List<Caution> cautions) {
    public Run {
        folds = List.copyOf(folds);
        lifts = List.copyOf(lifts);
        steps = List.copyOf(steps);
        volumeSteps = volumeSteps.stream().map(List::copyOf).toList();
        cautions = List.copyOf(cautions);
    }
}
