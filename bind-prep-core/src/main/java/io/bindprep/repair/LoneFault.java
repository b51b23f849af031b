package io.bindprep.repair;

import io.bindprep.wording.PageLists;
import java.util.Collection;
import java.util.List;

/** Reasons why what stands too near the binding edge cannot be moved by itself. */
enum LoneFault {
    UNREADABLE("the page could not be read whole"),
    ANNOTATION("it is an annotation or a form field"),
    PICTURE("it is part of a picture or a broad tint"),
    TEXT("it is part of the text or touches it"),
    ALONE("nothing stands at its place on other pages"),
    HELD("a clip, a mask or a pattern holds it in its place"),
    COLLIDES("what stands beside it leaves no room"),
    EDGE("it would come too near the outer edge");

    private static final int MOST_RANGES = 8;

    private final String why;

    LoneFault(String why) {
        this.why = why;
    }

    String said(Collection<Integer> pages) {
        List<Integer> sorted = pages.stream().sorted().distinct().toList();
        return "What is too near on " + PageLists.named(sorted, MOST_RANGES) + " cannot be moved alone: " + why + ".";
    }
}
