package io.bindprep.check;

import static io.bindprep.check.Severity.ERROR;
import static io.bindprep.check.Severity.NOTE;
import static io.bindprep.check.Severity.WARNING;

import java.util.List;
import java.util.Optional;

/** Every finding that a rule can make, by id in alphabetical order; a rule's new id gets its entry here. */
public final class FindingKinds {
    private static final String MOVE = "Have it moved away from the binding edge, or bind another edge (binding-edge).";
    private static final String MOVE_OR_ACCEPT =
            "Have it moved away from the binding edge, or accept it by a smaller binding-margin.";

    private static final List<FindingKind> ALL = List.of(
            kind(
                    WARNING,
                    "acceptance-unmet",
                    "The job accepts a finding that is not there, or no longer what was seen.",
                    "Look at it again, then accept it anew or remove the entry (accept)."),
            seen(ERROR, "annotation-hit", "A printing annotation lies in a hole, punching tolerance included.", MOVE),
            seen(
                    WARNING,
                    "annotation-tight",
                    "A printing annotation lies between the holes or inside the binding margin.",
                    MOVE_OR_ACCEPT),
            kind(
                    WARNING,
                    "appearance-missing",
                    "A form field, link border or comment has no appearance, so what prints depends on the viewer.",
                    "Ask for an export with forms and comments flattened, or print a proof first."),
            seen(ERROR, "art-hit", "Drawn art lies in a hole, punching tolerance included.", MOVE),
            seen(
                    WARNING,
                    "art-tight",
                    "Drawn art lies between the holes or inside the binding margin.",
                    MOVE_OR_ACCEPT),
            seen(
                    NOTE,
                    "background-at-binding-edge",
                    "A tint or picture runs through the binding edge and will be punched through.",
                    "Harmless for a plain tint; look at the page where it carries a face, lettering or other detail."),
            kind(
                    WARNING,
                    "binding-margin-inside-hole-zone",
                    "The binding margin asked for ends where holes may still fall.",
                    "Give a binding-margin beyond the hole zone, or leave it out for the pattern's own."),
            kind(
                    WARNING,
                    "blank-back-added",
                    "A back was left blank so that an insert or cover starts on a fresh leaf.",
                    "Check that the blank is wanted there; else move the insert or cover by one page."),
            kind(
                    WARNING,
                    "bleed-short",
                    "Art reaches the trim but not far enough beyond it.",
                    "Ask for an export with bleed; where leaves are printed at their size and not cut, set bleed: none."),
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
                    "No hole row fits the binding edge, so no page was held against holes.",
                    "Ask for the document at the size of its leaves, or give another binding-edge or trim."),
            kind(
                    NOTE,
                    "element-near-limit",
                    "The stack is near the limit of its element; charts differ.",
                    "Bind one copy first; if pages turn stiffly, take the next size."),
            kind(
                    List.of(ERROR, WARNING),
                    "element-off-line",
                    "The row of a punch that was measured slants by more than wire and paper leave; an error where a hole is"
                            + " cut open.",
                    "Have the back stop set square to the pins, and measure it again (testsheet, calibrate)."),
            kind(
                    ERROR,
                    "element-off-pitch",
                    "The holes of a punch that was measured drift too far from the element's pitch for the wire to pass.",
                    "Punch nothing with it: have its pins checked, and measure it again (testsheet, calibrate)."),
            kind(
                    ERROR,
                    "element-unknown",
                    "No element sizes are known for the pattern, so nothing says that one takes the stack.",
                    "Try an element on a dummy of the real stock, or choose a pitch whose elements are known."),
            kind(
                    WARNING,
                    "feed-same-end",
                    "The hole row is not symmetric, or slants: a leaf fed turned over would miss the element.",
                    "Put the same end to the side guide on every lift, or centre the row by a guide that moves."),
            kind(
                    WARNING,
                    "file-repaired",
                    "The PDF's table of objects was broken and has been rebuilt from what was found.",
                    "Ask for a fresh export, or compare every page with the client's proof."),
            kind(
                    WARNING,
                    "fold-out-not-wide",
                    "A page named as a fold-out is no wider than the book, so there is nothing to fold.",
                    "Take it out of fold-outs, or ask for the wide page."),
            kind(
                    ERROR,
                    "fold-out-too-wide",
                    "A fold-out does not fold into its panels clear of the hole zone and the trim.",
                    "Give it more panels, or have the page made narrower."),
            kind(
                    List.of(ERROR, WARNING),
                    "fold-out-undeclared",
                    "A page is as long at the binding edge as the others but half as wide again or more; an error where the"
                            + " job names the size.",
                    "Name it under fold-outs, or ask for it at the book's size."),
            kind(
                    WARNING,
                    "font-not-embedded",
                    "Text uses a font that is not in the file, so another may be printed in its place.",
                    "Ask for an export with all fonts embedded."),
            kind(
                    ERROR,
                    "half-hole",
                    "A leaf shorter at the binding edge than the others ends in a hole of the row.",
                    "Punch these leaves by themselves with that pin pulled, or have them made as long as the others."),
            kind(
                    WARNING,
                    "hanger-at-side",
                    "A hanger is asked for on a book that is not bound at the top.",
                    "Bind it at the top (binding-edge: top), or leave the hanger out."),
            kind(
                    ERROR,
                    "hanger-pins-fixed",
                    "Pins over the hanger's gap would cut holes into it, and cannot be pulled.",
                    "Punch it on a machine whose pins come out, or take a smaller hanger."),
            kind(
                    NOTE,
                    "header-junk",
                    "Bytes stand before the PDF header.",
                    "Ask for a plain export if the printer's front end refuses the file."),
            seen(ERROR, "image-hit", "What prints of a picture lies in a hole, punching tolerance included.", MOVE),
            kind(
                    WARNING,
                    "image-resolution",
                    "A picture has too few dots for the size it is printed at.",
                    "Ask for the picture in its original size, or accept it by a smaller image-ppi."),
            seen(
                    WARNING,
                    "image-tight",
                    "What prints of a picture lies between the holes or inside the binding margin.",
                    MOVE_OR_ACCEPT),
            seen(ERROR, "line-hit", "A line lies in a hole, punching tolerance included.", MOVE),
            seen(WARNING, "line-tight", "A line lies between the holes or inside the binding margin.", MOVE_OR_ACCEPT),
            kind(
                    List.of(ERROR, WARNING),
                    "page-rotated",
                    "A page has the right size but is rotated 90 degrees; an error where the job names the size.",
                    "Turn these pages in the PDF so that all stand alike, and check again."),
            kind(
                    ERROR,
                    "page-size",
                    "A page has another size than the job names.",
                    "Ask for these pages at the job's size, or set trim to the size that is wanted."),
            kind(
                    WARNING,
                    "page-size-mixed",
                    "A page has another size than most pages, and the job names none.",
                    "Ask whether these pages are meant so; set trim to the size that all should have."),
            kind(
                    ERROR,
                    "page-unchecked",
                    "A page could not be analysed whole, so nothing is known to be clear of the holes.",
                    "Ask for a fresh export, or look at these pages by eye against a test punch."),
            kind(
                    ERROR,
                    "pages-lost",
                    "The page tree names pages that are not in the file.",
                    "Ask for a fresh export, and for the number of pages it should have."),
            kind(
                    List.of(WARNING, NOTE),
                    "pages-turn-stiffly",
                    "So much paper lies outside the holes that pages do not turn freely on the element.",
                    "Punch less deep (depth), or take a larger element (clearance)."),
            kind(
                    ERROR,
                    "paper-outside-long",
                    "So much paper lies outside the holes that the element does not close round it.",
                    "Punch less deep (depth), or take a larger element (clearance)."),
            kind(
                    List.of(ERROR, WARNING),
                    "paper-outside-short",
                    "So little paper lies outside the holes that leaves tear out.",
                    "Punch deeper (depth), or measure the punch's stop again."),
            kind(
                    ERROR,
                    "pins-fixed",
                    "A pin would cut a half hole or leave too little paper at the sheet's end, and cannot be pulled.",
                    "Punch this size on a machine whose end pins come out, or choose another punch, pitch or trim."),
            kind(
                    ERROR,
                    "pitch-too-thick",
                    "No element of the pitch that the job asks for takes the stack.",
                    "Leave pitch and punch out to let a wider pitch be chosen; else split the book or take a thinner"
                            + " stock."),
            kind(
                    ERROR,
                    "press-sheet-small",
                    "Leaves do not fit on the job's press sheet with bleed and gripper.",
                    "Name a larger press-sheet, or its bleed and gripper where they are less."),
            kind(
                    WARNING,
                    "print-forbidden",
                    "The PDF's own permissions forbid printing.",
                    "Ask for a copy that may be printed."),
            kind(
                    NOTE,
                    "reading-direction",
                    "The PDF asks to be read right to left, but the job binds it at the left.",
                    "Set binding-edge: right if the book opens the other way."),
            kind(
                    WARNING,
                    "stack-may-not-close",
                    "At its thickest likely the stack does not close in the element.",
                    "Measure a pack of the real stock and give it as stock before buying elements."),
            kind(
                    NOTE,
                    "stack-straddles",
                    "The likely range of the stack falls between two sizes of element.",
                    "Measure a pack of the real stock and give it as stock before buying elements."),
            kind(
                    ERROR,
                    "stack-too-thick",
                    "No element of the method takes the stack.",
                    "Split the book into volumes, take a thinner stock, or bind by another method."),
            kind(
                    NOTE,
                    "tabs-beyond-covers",
                    "Tabs stand out beyond covers that are cut to the trim.",
                    "Cut the covers wider by as much if they are to protect the tabs."),
            seen(ERROR, "text-hit", "Text lies in a hole, punching tolerance included.", MOVE),
            seen(WARNING, "text-tight", "Text lies between the holes or inside the binding margin.", MOVE_OR_ACCEPT),
            kind(
                    WARNING,
                    "trim-outside-bleed",
                    "A TrimBox reaches beyond its BleedBox.",
                    "Ask for an export with its boxes set anew."),
            kind(
                    NOTE,
                    "trim-undeclared",
                    "A page has no TrimBox, so the visible page is taken as the trimmed leaf.",
                    "Fine where the PDF has no bleed and no crop marks; else ask for an export with its trim."),
            kind(
                    WARNING,
                    "unusual-turn",
                    "Backs would stand upside down when a leaf is turned.",
                    "Set sides to the usual one unless that is what is wanted."));

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
