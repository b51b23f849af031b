package io.bindprep.report.words;

import io.bindprep.binding.Reason;
import io.bindprep.volume.SplitReason;

/** Sentences in English of what a report decides with values alone, each without a full stop unless it is whole prose. */
public final class Sentences {
    private Sentences() {}

    /** What was compared, the numbers and their source. */
    public static String of(Reason reason) {
        return BindingWords.of(reason);
    }

    /** Ways out where no element takes the stack. */
    public static String of(SplitReason reason) {
        return VolumeWords.of(reason);
    }
}
