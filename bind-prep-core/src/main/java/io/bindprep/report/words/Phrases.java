package io.bindprep.report.words;

import java.util.Locale;

/** Words for constants. */
final class Phrases {
    private Phrases() {}

    /** "two-head-to-foot" and "hit" as a reader reads them. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
