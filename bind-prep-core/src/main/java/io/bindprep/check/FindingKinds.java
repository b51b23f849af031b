package io.bindprep.check;

import static io.bindprep.check.Severity.ERROR;
import static io.bindprep.check.Severity.NOTE;
import static io.bindprep.check.Severity.WARNING;

import io.bindprep.wording.Terms;
import java.util.List;
import java.util.Optional;

/** Every finding that a rule can make, by id in alphabetical order; a rule's new id gets its entry here. */
public final class FindingKinds {
    private static final String MOVE = "Have it moved away from the binding edge, or bind another edge (binding-edge).";
    private static final String MOVE_OR_ACCEPT =
            "Have it moved away from the binding edge, or accept a smaller margin (binding-margin).";

    private static final List<FindingKind> ALL = List.of(
            kind(
                    WARNING,
                    "acceptance-unmet",
                    "The job accepts a finding that is not there, or no longer what was seen.",
                    "Look at it again, then accept it anew or remove the entry (accept)."),
            seen(
                    ERROR,
                    "annotation-hit",
                    "A printing annotation lies in a hole, " + Terms.PUNCHING_TOLERANCE + " included.",
                    MOVE),
            seen(
                    WARNING,
                    "annotation-tight",
                    "A printing annotation lies between the holes or inside the " + Terms.BINDING_MARGIN + ".",
                    MOVE_OR_ACCEPT),
            kind(
                    WARNING,
                    "appearance-missing",
                    "A form field, link border or comment has no appearance, so what prints depends on the viewer.",
                    "Ask for an export with forms and comments flattened, or print a proof first."),
            seen(ERROR, "art-hit", "Drawn art lies in a hole, " + Terms.PUNCHING_TOLERANCE + " included.", MOVE),
            seen(
                    WARNING,
                    "art-tight",
                    "Drawn art lies between the holes or inside the " + Terms.BINDING_MARGIN + ".",
                    MOVE_OR_ACCEPT),
            seen(
                    NOTE,
                    "background-at-binding-edge",
                    "A tint or picture runs through the binding edge. The holes will cut it.",
                    "A plain tint is harmless. Look at pages where a face, lettering or other detail lies there."),
            kind(
                    WARNING,
                    "binding-margin-inside-hole-zone",
                    "The " + Terms.BINDING_MARGIN + " of the job is narrower than the " + Terms.HOLE_ZONE + ".",
                    "Use a wider margin, or that of the pattern (binding-margin)."),
            kind(
                    WARNING,
                    "blank-back-added",
                    "A back was left blank so that an insert or cover starts on a fresh leaf.",
                    "Check that a blank page is wanted there. Otherwise move the insert or cover by one page."),
            kind(
                    WARNING,
                    "bleed-short",
                    "Art reaches the trim with too little bleed.",
                    "Ask for an export with bleed. If leaves are not trimmed after printing, switch the check off (bleed: none)."),
            kind(
                    ERROR,
                    "closer-size",
                    "The punch's closer does not take the element that the stack needs.",
                    "Close it on a machine that takes it, take a thinner stock, or split the book into volumes."),
            kind(
                    WARNING,
                    "content-fault",
                    "The content refers to something missing, or holds an operator nobody knows; viewers pass over it.",
                    "Compare the pages with the client's proof, or ask for a fresh export."),
            kind(
                    ERROR,
                    "edge-unpunchable",
                    "No hole row fits the binding edge, so no page was checked against holes.",
                    "Ask for the document at the size of its leaves, or correct the job (binding-edge, trim)."),
            kind(
                    NOTE,
                    "element-near-limit",
                    "The stack is near the limit of its element. Charts differ here.",
                    "Bind one copy first. If its pages turn stiffly, use the next size."),
            kind(
                    List.of(ERROR, WARNING),
                    "element-off-line",
                    "The measured row of the punch slants too far for wire and paper. An error where it cuts a hole open.",
                    "Have the back stop set square to the pins. Then measure the punch again (testsheet, calibrate)."),
            kind(
                    ERROR,
                    "element-off-pitch",
                    "The measured holes of the punch drift too far from the pitch. The wire does not pass.",
                    "Punch nothing with it. Have its pins checked, then measure it again (testsheet, calibrate)."),
            kind(
                    ERROR,
                    "element-unknown",
                    "No element sizes are known for the pattern, so the element could not be chosen.",
                    "Try an element on a dummy of the real stock, or choose another pitch (pitch)."),
            kind(
                    WARNING,
                    "feed-same-end",
                    "The hole row is not symmetric, or slants. A leaf fed the other way would miss the element.",
                    "Put the same end to the side guide on every lift, or use an adjustable side guide."),
            kind(
                    WARNING,
                    "file-repaired",
                    "The PDF's cross-reference table was broken and has been rebuilt.",
                    "Ask for a fresh export, or compare every page with the client's proof."),
            kind(
                    WARNING,
                    "fold-out-not-wide",
                    "A declared fold-out is no wider than the book. There is nothing to fold.",
                    "Ask for the wide page, or take it off the list of fold-outs (fold-outs)."),
            kind(
                    ERROR,
                    "fold-out-too-wide",
                    "A fold-out is too wide to fold clear of the holes and the trim.",
                    "Fold it in more panels (fold-outs), or have the page made narrower."),
            kind(
                    List.of(ERROR, WARNING),
                    "fold-out-undeclared",
                    "A page is as high as the others but at least half as wide again. An error where the job names the"
                            + " size.",
                    "Declare it (fold-outs), or ask for it at the book's size."),
            kind(
                    WARNING,
                    "font-not-embedded",
                    "Text uses a font that is not in the file, so the printer may replace it.",
                    "Ask for an export with all fonts embedded."),
            kind(
                    ERROR,
                    "half-hole",
                    "The end of a shorter leaf cuts through a hole.",
                    "Pull that pin and punch these leaves separately, or have them made as long as the others."),
            kind(
                    WARNING,
                    "hanger-at-side",
                    "A hanger is asked for on a book that is not bound at the top.",
                    "Bind it at the top (binding-edge: top), or leave the hanger out."),
            kind(
                    ERROR,
                    "hanger-pins-fixed",
                    "Fixed pins would punch holes in the gap for the hanger.",
                    "Use a punch with removable pins, or a smaller hanger."),
            kind(
                    NOTE,
                    "header-junk",
                    "Bytes stand before the PDF header.",
                    "If the printer refuses the file, ask for a plain export."),
            seen(
                    ERROR,
                    "image-hit",
                    "What prints of a picture lies in a hole, " + Terms.PUNCHING_TOLERANCE + " included.",
                    MOVE),
            kind(
                    WARNING,
                    "image-resolution",
                    "A picture has too low a resolution at printed size.",
                    "Ask for the picture at its original size, or accept a lower resolution (image-ppi)."),
            seen(
                    WARNING,
                    "image-tight",
                    "What prints of a picture lies between the holes or inside the " + Terms.BINDING_MARGIN + ".",
                    MOVE_OR_ACCEPT),
            seen(ERROR, "line-hit", "A line lies in a hole, " + Terms.PUNCHING_TOLERANCE + " included.", MOVE),
            seen(
                    WARNING,
                    "line-tight",
                    "A line lies between the holes or inside the " + Terms.BINDING_MARGIN + ".",
                    MOVE_OR_ACCEPT),
            kind(
                    List.of(ERROR, WARNING),
                    "page-rotated",
                    "A page has the right size but is rotated 90 degrees; an error where the job names the size.",
                    "Rotate these pages in the PDF and check again."),
            kind(
                    ERROR,
                    "page-size",
                    "A page differs in size from the job.",
                    "Ask for these pages at the job's size, or correct the job (trim)."),
            kind(
                    WARNING,
                    "page-size-mixed",
                    "A page differs in size from most pages, and the job names no size.",
                    "Ask the client. Then allow their size (other-sizes) or give the size of all pages (trim)."),
            kind(
                    ERROR,
                    "page-unchecked",
                    "A page could not be checked in full. Nothing is known of it.",
                    "Ask for a fresh export, or compare these pages by eye with a test punch."),
            kind(
                    ERROR,
                    "pages-lost",
                    "Pages of the page tree are missing from the file.",
                    "Ask for a fresh export, and how many pages it should have."),
            kind(
                    List.of(WARNING, NOTE),
                    "pages-turn-stiffly",
                    "Too much paper lies between holes and edge, so pages turn stiffly on the element.",
                    "Punch nearer the edge (depth), or use a larger element (clearance)."),
            kind(
                    ERROR,
                    "paper-outside-long",
                    "Too much paper lies between holes and edge for the element to close round it.",
                    "Punch nearer the edge (depth), or use a larger element (clearance)."),
            kind(
                    List.of(ERROR, WARNING),
                    "paper-outside-short",
                    "Too little paper lies between holes and edge, so leaves tear out.",
                    "Punch deeper (depth), or measure the punch's stop again."),
            kind(
                    ERROR,
                    "pins-fixed",
                    "A fixed pin would cut a half hole or leave too little paper at the end of the leaf.",
                    "Use a punch with removable end pins, or another pitch or size (punch, pitch, trim)."),
            kind(
                    ERROR,
                    "pitch-too-thick",
                    "No element of the job's pitch takes the stack.",
                    "Allow another pitch (pitch, punch), split the book, or use a thinner stock."),
            kind(
                    ERROR,
                    "press-sheet-small",
                    "Leaves do not fit on the job's press sheet with bleed and gripper.",
                    "Use a larger press sheet, or give its smaller bleed and gripper edge (press-sheet)."),
            kind(
                    WARNING,
                    "print-forbidden",
                    "The PDF's own permissions forbid printing.",
                    "Ask for a copy that may be printed."),
            kind(
                    NOTE,
                    "reading-direction",
                    "The PDF reads right to left, but the job binds it at the left.",
                    "If the book opens the other way, bind it at the right (binding-edge: right)."),
            kind(
                    WARNING,
                    "stack-may-not-close",
                    "The stack at its thickest may not close in the element.",
                    "Measure a pack of the real stock before you buy elements (stock)."),
            kind(
                    NOTE,
                    "stack-straddles",
                    "The likely range of the stack falls between two element sizes.",
                    "Measure a pack of the real stock before you buy elements (stock)."),
            kind(
                    ERROR,
                    "stack-too-thick",
                    "No element of the method takes the stack.",
                    "Split the book into volumes, use a thinner stock, or bind by another method."),
            kind(
                    NOTE,
                    "tabs-beyond-covers",
                    "Tabs extend beyond the covers.",
                    "To protect the tabs, cut the covers wider by as much."),
            seen(ERROR, "text-hit", "Text lies in a hole, " + Terms.PUNCHING_TOLERANCE + " included.", MOVE),
            seen(
                    WARNING,
                    "text-tight",
                    "Text lies between the holes or inside the " + Terms.BINDING_MARGIN + ".",
                    MOVE_OR_ACCEPT),
            kind(
                    WARNING,
                    "trim-outside-bleed",
                    "A TrimBox extends beyond its BleedBox.",
                    "Ask for an export with correct page boxes."),
            kind(
                    NOTE,
                    "trim-undeclared",
                    "A page has no TrimBox, so the visible page is taken as the trimmed leaf.",
                    "This is fine for a PDF without bleed and crop marks. Otherwise ask for an export with its TrimBox."),
            kind(
                    WARNING,
                    "unusual-turn",
                    "Every back is upside down when its leaf is turned.",
                    "Print the backs the other way up (sides), unless this is intended."));

    private FindingKinds() {}

    /** Every kind, by id. */
    public static List<FindingKind> all() {
        return ALL;
    }

    /** The kind of this id; empty where no rule makes such a finding. */
    public static Optional<FindingKind> of(String id) {
        return ALL.stream().filter(k -> k.id().equals(id)).findFirst();
    }

    private static FindingKind kind(Severity severity, String id, String meaning, String remedy) {
        return kind(List.of(severity), id, meaning, remedy);
    }

    private static FindingKind kind(List<Severity> severities, String id, String meaning, String remedy) {
        return new FindingKind(id, severities, false, meaning, remedy);
    }

    /** One that is looked for in what pages paint. */
    private static FindingKind seen(Severity severity, String id, String meaning, String remedy) {
        return new FindingKind(id, List.of(severity), true, meaning, remedy);
    }
}
