package io.bindprep.repair;

import io.bindprep.check.Say;
import io.bindprep.marks.Mark;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.Measures;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** Words on the marks that decide how far a page's content may move: the one nearest the binding, the outermost one. */
record MarginWords(Measures measures, double clearMm) {
    String needs(PageRoom r) {
        return "Page " + r.page() + " needs the largest move: " + nearMark(r) + ".";
    }

    String kept(PageRoom r, double t) {
        return "Page " + r.page() + " has the smallest outer margin: " + outerMark(r) + ", "
                + measures.down(Length.ofMeasuredMm(Math.max(0, r.outerMm() - t))) + " after the move.";
    }

    String nearMark(PageRoom r) {
        Length near = Length.ofMeasuredMm(r.nearMm());
        Length clear = Length.ofMeasuredMm(clearMm);
        double dot = r.near() == null ? 0 : r.near().stage().coarseMm();
        return mark(r.near()) + " " + measures.beside(near, clear) + " from the binding edge"
                + (dot > 0 ? " (measured to " + measures.mark(dot) + ")" : "") + "; "
                + measures.beside(clear, near) + " required";
    }

    String outerMark(PageRoom r) {
        return mark(r.outer()) + " " + measures.down(Length.ofMeasuredMm(r.outerMm())) + " from its outer edge";
    }

    private static String mark(@Nullable Mark mark) {
        if (mark == null) {
            return "nothing";
        }
        String kind = switch (mark.kind()) {
            case TEXT -> "text";
            case LINE -> "a line";
            case ART -> "drawn art";
            case IMAGE -> "a picture";
            case ANNOTATION -> "an annotation";
            case BACKGROUND -> "a background";
        };
        return mark.words().isBlank() ? kind : kind + " (" + Say.quote(mark.words()) + ")";
    }

    static String percent(double scale) {
        return LengthText.plain(BigDecimal.valueOf(scale).movePointRight(2), 2) + " %";
    }
}
