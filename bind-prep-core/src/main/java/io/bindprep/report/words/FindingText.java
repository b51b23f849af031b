package io.bindprep.report.words;

import io.bindprep.check.Finding;
import io.bindprep.wording.PageLists;

/** Sentences of a finding with its pages. */
public final class FindingText {
    private FindingText() {}

    /**
     * The message and the pages that it does not name itself.
     *
     * @param most ranges of pages to list before the rest is counted
     */
    public static String located(Finding f, int most) {
        if (f.pages().isEmpty()) {
            return f.message();
        }
        String sentence = f.message().endsWith(".") ? f.message() + " " : f.message() + ". ";
        int only = f.pages().get(0);
        if (f.pages().size() == 1) {
            boolean named = f.message().matches("(?s).*\\b[Pp]age " + only + "\\b.*");
            return named ? f.message() : sentence + "Page " + only + ".";
        }
        return sentence + "Pages " + PageLists.compact(f.pages(), most) + ".";
    }
}
