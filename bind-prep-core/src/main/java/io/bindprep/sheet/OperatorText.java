package io.bindprep.sheet;

import io.bindprep.wording.Capital;
import java.util.regex.Pattern;

/** Sentences as the operator's sheet has them: a source by its kind and year, since its authors stand in the tables. */
final class OperatorText {
    private static final Pattern AUTHOR = Pattern.compile("(?:\\p{Lu}\\. )+\\p{Lu}\\p{Ll}+, (?:\"[^\"]*\", )?");
    private static final Pattern TRADE_PRESS =
            Pattern.compile("Printing (?:News|Impressions)(?:,(?: \\p{L}{3,9})? (\\d{4}))?");

    private OperatorText() {}

    static String of(String sentence) {
        String text = TRADE_PRESS
                .matcher(AUTHOR.matcher(sentence).replaceAll(""))
                .replaceAll(m -> m.group(1) == null ? "trade press" : "trade press, " + m.group(1));
        return Capital.first(text);
    }
}
