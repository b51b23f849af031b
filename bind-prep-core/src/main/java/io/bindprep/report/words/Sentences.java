package io.bindprep.report.words;

import io.bindprep.binding.Reason;
import io.bindprep.paper.StackReason;
import io.bindprep.run.Caution;
import io.bindprep.run.MaterialReason;
import io.bindprep.run.Step;
import io.bindprep.volume.SplitReason;
import io.bindprep.wording.Measures;
import java.util.List;

/** Sentences in English of what a report decides with values alone, each without a full stop unless it is whole prose. */
public final class Sentences {
    private Sentences() {}

    /** Sentence on a decision with exact numbers: what was compared, and the source. */
    public static String of(Reason reason) {
        return of(reason, Measures.EXACT);
    }

    /** Sentence on a decision with numbers as people read them. */
    public static String of(Reason reason, Measures measures) {
        return BindingWords.of(reason, measures);
    }

    /** Sentence on a way out where no element takes the stack. */
    public static String of(SplitReason reason) {
        return VolumeWords.of(reason);
    }

    /** Sentence on how a stack's thickness or weight came about, with exact numbers. */
    public static String of(StackReason reason) {
        return of(reason, Measures.EXACT);
    }

    /** Sentence on how a stack's thickness or weight came about, with numbers as people read them. */
    public static String of(StackReason reason, Measures measures) {
        return PaperWords.of(reason, measures);
    }

    /** Sentence on how the materials of a run were counted. */
    public static String of(MaterialReason reason) {
        return MaterialWords.of(reason);
    }

    /** Instructions of a step with the job's numbers, one sentence or two each. */
    public static List<String> of(Step step) {
        return StepWords.of(step);
    }

    /** Sentence of a caution. */
    public static String of(Caution caution) {
        return of(caution, Measures.METRIC);
    }

    /** Sentence of a caution, with its load in the units of the paper. */
    public static String of(Caution caution, Measures measures) {
        return CautionWords.of(caution, measures);
    }

    /** Source that a caution rests on; it is worded here, not quoted, and is no legal advice. */
    public static String source(Caution caution) {
        return CautionWords.source(caution);
    }
}
