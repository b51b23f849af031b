package io.bindprep.run;

import java.util.List;

/**
 * One step of the work.
 *
 * @param work what kind of work it is
 * @param values what it is told with; its sentences are made in {@code report.words}
 * @param cautions what can hurt someone or spoil the run here; the machine's manual, site rules and local law come first
 */
public record Step(Work work, StepValues values, List<Caution> cautions) {
    public Step {
        cautions = List.copyOf(cautions);
    }

    /** Kinds of work, in trade order. */
    public enum Work {
        PRINT,
        TRIM,
        FOLD,
        SET_PUNCH,
        JOG,
        PUNCH,
        COVERS,
        THREAD,
        CLOSE,
        TURN_COVER,
        CHECK,
        PACK
    }
}
