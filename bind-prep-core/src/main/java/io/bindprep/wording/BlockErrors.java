package io.bindprep.wording;

import io.bindprep.problem.SettingException;
import java.util.List;

/** Page ranges of a job that do not go with the pages that there are, each with its sentence and remedy. */
public final class BlockErrors {
    private final String key;
    private final String given;
    private final int pages;

    /**
     * A range that is wrong.
     *
     * @param key the job key
     * @param given the range as text
     * @param pages how many pages there are
     */
    public BlockErrors(String key, String given, int pages) {
        this.key = key;
        this.given = given;
        this.pages = pages;
    }

    /** Both covers take a page. */
    public SettingException coversOverlap() {
        return wrong("the back cover's pages are the front cover's already");
    }

    /** A front cover of other pages than the first. */
    public SettingException frontCover() {
        return wrong("a printed front cover takes page 1, or pages 1-2");
    }

    /** A back cover of other pages than the last. */
    public SettingException backCover() {
        return wrong("a printed back cover takes the last page, or the last two");
    }

    /** Pages that have two uses. */
    public SettingException usedTwice() {
        return wrong("these pages overlap another insert, fold-out, tab or cover");
    }

    /** A tab before a page of a cover. */
    public SettingException tabAtCover() {
        return wrong("a tab can only stand before a page of the body, not of a cover");
    }

    /** A tab within leaves that hang together. */
    public SettingException tabInside() {
        return wrong("a tab cannot stand inside a fold-out or another tab");
    }

    /** Pages that there are not. */
    public SettingException noSuchPages() {
        return wrong("these pages are not all in the document, first to last");
    }

    private SettingException wrong(String why) {
        return new SettingException(
                key,
                given,
                why + "; given: " + given + "; the document has " + (pages == 1 ? "1 page" : "pages 1-" + pages),
                "correct the page range or leave it out",
                List.of());
    }
}
