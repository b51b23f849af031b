package io.bindprep.check;

import io.bindprep.page.PageEdge;
import io.bindprep.wording.PageLists;
import io.bindprep.wording.Printable;
import java.util.List;

/** Wording that several rules share. */
public final class Say {
    private static final int LONGEST_QUOTE = 40;

    private Say() {}

    /** "1 page", "3 pages". */
    static String pages(int count) {
        return count == 1 ? "1 page" : count + " pages";
    }

    /** "pin 5", "pins 5-7, 9". */
    public static String pins(List<Integer> pins) {
        return (pins.size() == 1 ? "pin " : "pins ") + PageLists.compact(pins);
    }

    /** Origin of lengths along the binding edge on a page. */
    static String origin(PageEdge bindingEdge) {
        return bindingEdge == PageEdge.TOP || bindingEdge == PageEdge.BOTTOM ? "the left edge" : "the head";
    }

    /** A document's own words in quotes, shortened; they are hostile input, so no control or direction mark passes. */
    public static String quote(String words) {
        return Printable.quoted(words, LONGEST_QUOTE);
    }

    static Finding document(String rule, Severity severity, String message, String remedy) {
        return Finding.of(rule, severity, List.of(), message, remedy);
    }

    static Finding onPages(String rule, Severity severity, List<Integer> pages, String message, String remedy) {
        return Finding.of(rule, severity, pages, message, remedy);
    }
}
