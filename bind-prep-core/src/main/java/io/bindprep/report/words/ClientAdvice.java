package io.bindprep.report.words;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Advice to a designer for each kind of finding that is theirs to mend, in words without any of the shop's. */
final class ClientAdvice {
    /** Findings of what is on the pages, told page by page as something to move. */
    static final Set<String> MOVES = Set.of(
            "text-hit",
            "text-tight",
            "line-hit",
            "line-tight",
            "art-hit",
            "art-tight",
            "image-hit",
            "image-tight",
            "annotation-hit",
            "annotation-tight");

    private static final Map<String, String> BY_ID = Map.ofEntries(
            entry(
                    "appearance-missing",
                    "Form fields, links or comments may print differently from what you see. Flatten forms and comments"
                            + " when you export."),
            entry(
                    "background-at-binding-edge",
                    "A picture or colour runs to the side that is bound and will have holes in it. Check that no face or"
                            + " lettering is there."),
            entry(
                    "bleed-short",
                    "Pictures or colours end at the edge of the page. Let them run past it, and export with bleed, so that no"
                            + " white line shows after cutting."),
            entry(
                    "content-fault",
                    "A part of these pages is broken in the file. Export the PDF again and look at them."),
            entry("file-repaired", "The file is damaged in a way that could be repaired. Export the PDF again."),
            entry(
                    "fold-out-not-wide",
                    "This page should fold out, but it is no wider than the others. Send the wide page."),
            entry("fold-out-too-wide", "This page is too wide to fold in. Make it narrower."),
            entry(
                    "fold-out-undeclared",
                    "This page is much wider than the others. Tell us if it should fold out; else make it as wide as the"
                            + " others."),
            entry(
                    "font-not-embedded",
                    "A font is not in the file, so another may be printed. Embed all fonts when you export."),
            entry(
                    "image-resolution",
                    "A picture is too small for its size on the page and will look blurred. Use the picture in its original"
                            + " size."),
            entry(
                    "page-rotated",
                    "These pages lie on their side. Rotate them like the others, or tell us that they are meant so."),
            entry("page-size", "These pages have another size than agreed. Export them at the agreed size."),
            entry(
                    "page-size-mixed",
                    "These pages have another size than most. Export all pages at one size, or tell us that they are meant"
                            + " so."),
            entry(
                    "page-unchecked",
                    "These pages could not be checked whole. Export the PDF again, without passwords and with all pictures"
                            + " and fonts in it."),
            entry(
                    "pages-lost",
                    "Pages are missing in the file. Export it again, and tell us how many pages it should have."),
            entry("print-forbidden", "The file forbids printing. Export it without that restriction."),
            entry(
                    "reading-direction",
                    "The file says that it reads from right to left. Tell us on which side the book opens."),
            entry(
                    "trim-outside-bleed",
                    "The page sizes in the file contradict each other. Export it again with page size and bleed set anew."),
            entry(
                    "trim-undeclared",
                    "The file does not say where the pages are cut. If it has bleed or crop marks, export it with the page"
                            + " size set; else nothing is to do."));

    private ClientAdvice() {}

    /** The advice on a kind of finding; empty where it is not the designer's to mend. */
    static Optional<String> of(String id) {
        return Optional.ofNullable(BY_ID.get(id));
    }

    /** Every id that there is advice for. */
    static Set<String> ids() {
        return BY_ID.keySet();
    }
}
