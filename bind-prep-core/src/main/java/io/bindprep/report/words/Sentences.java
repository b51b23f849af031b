package io.bindprep.report.words;

import io.bindprep.binding.Reason;

/** Sentences in English of what a report decides with values alone, each without a full stop unless it is whole prose. */
public final class Sentences {
    private Sentences() {}

    /** What was compared, the numbers and their source. */
    public static String of(Reason reason) {
        return BindingWords.of(reason);
    }
}
