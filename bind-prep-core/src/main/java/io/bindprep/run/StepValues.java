package io.bindprep.run;

import io.bindprep.binding.Plan;
import io.bindprep.job.Job;
import java.util.List;

/**
 * Values that the steps of a run are told with.
 *
 * @param plans the plan of the copy, or of its volumes in order
 */
public record StepValues(
        Job job, Materials materials, List<Fold> folds, List<Plan> plans, List<Lift> lifts, long strokes) {
    public StepValues {
        folds = List.copyOf(folds);
        plans = List.copyOf(plans);
        lifts = List.copyOf(lifts);
    }
}
