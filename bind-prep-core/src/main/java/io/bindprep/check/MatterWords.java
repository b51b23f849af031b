package io.bindprep.check;

import io.bindprep.marks.EdgePicture;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import java.util.List;

/** Sentences on marks that the holes take or that stand too near the binding edge. */
final class MatterWords {
    private final MatterCase c;
    private final Mark mark;
    private final Measures measures;

    MatterWords(MatterCase c) {
        this.c = c;
        this.mark = c.mark();
        this.measures = c.situation().measures();
    }

    String message() {
        String words = mark.words().isBlank() ? "" : ": " + Say.quote(mark.words());
        return pages() + ": " + noun(mark.kind()) + " " + distance() + ". " + place() + words + ". " + seen() + ".";
    }

    private String pages() {
        int count = c.fold().pages().size();
        String worst = String.valueOf(c.fold().worstPage());
        return count == 1
                ? "Page " + worst
                : Say.pages(count) + ": " + noun(mark.kind())
                        + (c.hit() ? " in the holes" : " too near the binding edge") + alike() + ". Worst on page "
                        + worst;
    }

    private String alike() {
        if (!c.fold().alike()) {
            return "";
        }
        return mark.words().isBlank() ? ", in the same place on each" : ", the same words on each";
    }

    private String distance() {
        Length near = Length.ofMeasuredMm(mark.nearMm());
        return measures.beside(near, c.limit()) + " from the binding edge; " + reach()
                + measures.beside(c.limit(), near);
    }

    private String reach() {
        if (c.cut() != null) {
            return "the hanger's thumb cut, tolerance included, reaches ";
        }
        return c.hit() ? "the holes, tolerance included, reach " : "minimum margin ";
    }

    private String place() {
        List<Integer> pins = c.worst().pins();
        return "At " + (pins.isEmpty() ? "" : Say.pins(pins) + ", ")
                + measures.marks(mark.alongStartMm(), mark.alongEndMm()) + " from "
                + Say.origin(c.situation().place(c.fold().worstPage()).bindingEdge());
    }

    String remedy() {
        if (mark.kind() == MarkKind.IMAGE && mark.stage() == Stage.ESTIMATE) {
            return "Look at the page. If it is a photograph, accept this; otherwise move the words away from the"
                    + " binding edge.";
        }
        return "Have it moved "
                + measures.up(c.goal().minus(Length.ofMeasuredMm(mark.nearMm())).max(Length.ZERO))
                + " away from the binding edge, or " + instead();
    }

    private String instead() {
        if (c.cut() != null) {
            return "make the thumb cut smaller (hanger).";
        }
        if (c.hit()) {
            return "bind another edge (binding-edge).";
        }
        return mark.nearMm() < c.zone().mm()
                ? "accept the risk. It lies between two holes; a shift of the punch may cut it."
                : "accept a smaller margin, at least " + measures.up(c.zone()) + " (binding-margin).";
    }

    /** Words for the stage that decided, and for its exactness. */
    private String seen() {
        return switch (mark.stage()) {
            case GEOMETRY -> "Measured from the outline";
            case ESTIMATE ->
                switch (mark.kind()) {
                    case ANNOTATION -> "Estimated: each viewer draws it differently";
                    case IMAGE ->
                        "Estimated: the picture runs through the binding edge and may be a photograph" + ground();
                    default -> "Estimated: its font is not in the file";
                };
            case RASTER -> "Measured from the drawn page, to 0.2 mm" + ground();
        };
    }

    /** Says by what a picture through the edge was judged. */
    private String ground() {
        EdgePicture.Nature nature =
                mark.stage() == Stage.ESTIMATE ? EdgePicture.Nature.IN_DOUBT : EdgePicture.Nature.PAGE;
        return c.situation().verdicts().stream()
                .filter(v -> v.page() == c.fold().worstPage() && mark.kind() == MarkKind.IMAGE)
                .flatMap(v -> v.basics().edgePictures().stream())
                .filter(p -> p.nature() == nature)
                .map(p -> nature == EdgePicture.Nature.PAGE
                        ? ". The picture counts as a page or scan: " + page(p)
                        : doubt(p))
                .findFirst()
                .orElse("");
    }

    private static String page(EdgePicture p) {
        return p.by() == EdgePicture.By.LETTERING
                ? "letters stand on even ground"
                : "one ground colour on " + p.groundPercent() + " % of the edge";
    }

    private static String doubt(EdgePicture p) {
        return switch (p.by()) {
            case LETTERING -> ". Marks of the size of letters stand on even ground in it";
            case GROUND ->
                ". One ground colour on " + p.groundPercent() + " % of the edge; a page has it on 90 % or more";
            case EVEN_GROUND -> ". Its tone changes evenly, as a drawn ground does, and sharp marks lie on it";
            case PALE_MARKS -> ". Its ground has grain, as a scan has, but few of its marks are as dark as print";
        };
    }

    private static String noun(MarkKind kind) {
        return switch (kind) {
            case TEXT -> "text";
            case LINE -> "line";
            case ART -> "drawn art";
            case IMAGE -> "picture";
            case ANNOTATION -> "annotation";
            case BACKGROUND -> "background";
        };
    }
}
