package io.bindprep.run;

import io.bindprep.binding.Plan;
import io.bindprep.job.Job;
import java.util.List;

/**
 * Values that the steps of a run are told with.
 *
 * @param plans the plan of the copy, or of its volumes in order
 * @param volume the volume that they are of, from 1; 0 for the whole copy
 */
public record StepValues(
        Job job, Materials materials, List<Fold> folds, List<Plan> plans, List<Lift> lifts, long strokes, int volume) {
    public StepValues {
        folds = List.copyOf(folds);
        plans = List.copyOf(plans);
        lifts = List.copyOf(lifts);
    }

    /** The values of one volume alone, for a page of its own. */
    StepValues ofVolume(int number, long itsStrokes) {
        return new StepValues(
                job,
                materials,
                folds,
                List.of(plans.get(number - 1)),
                RunPlanner.ofVolume(lifts, number),
                itsStrokes,
                number);
    }
}
