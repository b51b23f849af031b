package io.bindprep.check;

import java.util.List;

/** {@code blank-back-added}: a back left blank so that an insert, divider or cover starts on a fresh leaf. */
final class BlankBackRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        List<Integer> pages = s.block().addedBlankBacks();
        if (pages.isEmpty()) {
            return List.of();
        }
        return List.of(Say.onPages(
                "blank-back-added",
                Severity.WARNING,
                pages,
                "A blank back was added after " + Say.pages(pages.size())
                        + ". The insert or cover after it starts on a fresh leaf.",
                "Check that a blank page is wanted there. Otherwise move the insert or cover by one page, or have"
                        + " a page added to the PDF."));
    }
}
