package io.bindprep.run;

import io.bindprep.binding.Plan;
import io.bindprep.run.Caution.Load;
import io.bindprep.run.Step.Work;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Puts the steps of a job in trade order, each with what can hurt someone there. */
final class StepOrder {
    private final StepValues values;
    private final List<Step> steps = new ArrayList<>();

    private StepOrder(StepValues values) {
        this.values = values;
    }

    static List<Step> of(StepValues values) {
        StepOrder order = new StepOrder(values);
        order.all();
        return order.steps;
    }

    /** Steps at the punch for one volume; the run is packed with the last. */
    static List<Step> ofVolume(StepValues values, boolean last) {
        StepOrder order = new StepOrder(values);
        order.punched();
        if (last) {
            order.packed();
        }
        return order.steps;
    }

    private void all() {
        add(Work.PRINT);
        add(Work.TRIM, Caution.GUILLOTINE, Caution.GUARDS);
        if (values.folds().stream().anyMatch(Fold::fits)) {
            add(Work.FOLD);
        }
        punched();
        packed();
    }

    private void punched() {
        if (values.plans().stream().allMatch(StepOrder::bindable)) {
            add(Work.SET_PUNCH, Caution.ISOLATE, Caution.WASTE_FIRST);
            add(Work.JOG);
            add(Work.PUNCH, Caution.GUARDS);
            closing();
            add(Work.CHECK);
        }
    }

    private void packed() {
        BigDecimal run = values.materials().knownRunG();
        if (run.signum() > 0) {
            add(Work.PACK, Caution.lifting(new Load(run, values.materials().runG() == null)));
        }
    }

    private static boolean bindable(Plan plan) {
        return plan.element() != null && !plan.row().holes().isEmpty();
    }

    private void closing() {
        add(Work.COVERS);
        switch (values.job().binding()) {
            case WIRE -> {
                add(Work.THREAD, Caution.ENDS);
                add(Work.CLOSE, Caution.CLOSER);
                add(Work.TURN_COVER);
            }
            case COIL -> {
                add(Work.THREAD, Caution.ENDS);
                add(Work.CLOSE, Caution.ENDS);
            }
            case COMB -> {
                add(Work.THREAD, Caution.GUARDS);
                add(Work.CLOSE);
            }
            case RINGS -> {
                add(Work.THREAD);
                add(Work.CLOSE, Caution.RINGS);
            }
        }
    }

    private void add(Work work, Caution... cautions) {
        steps.add(new Step(work, values, List.of(cautions)));
    }
}
