package io.bindprep.run;

import java.util.List;

/**
 * One step of the work.
 *
 * @param work what kind of work it is
 * @param instructions what to do, with this job's numbers, one sentence or two each
 * @param cautions what can hurt someone or spoil the run here; the machine's manual, site rules and local law come first
 */
public record Step(Work work, List<String> instructions, List<Caution> cautions) {
    public Step {
        instructions = List.copyOf(instructions);
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
