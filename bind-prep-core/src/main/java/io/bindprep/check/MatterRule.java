package io.bindprep.check;

import io.bindprep.binding.Gap;
import io.bindprep.binding.Plan;
import io.bindprep.marks.EdgePicture;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Stage;
import io.bindprep.marks.Verdict;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * {@code text-hit}, {@code text-tight} and so on for line, art, image, annotation: what the holes take, and what
 * stands too near. A page counts for each kind by its worse case.
 */
final class MatterRule implements Rule {
    private static final List<MarkKind> KINDS =
            List.of(MarkKind.TEXT, MarkKind.LINE, MarkKind.ART, MarkKind.IMAGE, MarkKind.ANNOTATION);

    @Override
    public List<Finding> find(Situation s) {
        List<Finding> findings = new ArrayList<>();
        for (MarkKind kind : KINDS) {
            for (Verdict verdict : List.of(Verdict.HIT, Verdict.TIGHT)) {
                MatterFold.of(s.verdicts(), kind, verdict).forEach(fold -> findings.add(finding(s, verdict, fold)));
            }
        }
        return findings;
    }

    private static Finding finding(Situation s, Verdict verdict, MatterFold fold) {
        Plan plan = s.plan();
        Hit worst = fold.worst();
        Mark mark = worst.mark();
        boolean hit = verdict == Verdict.HIT;
        Length zone = plan.holeZone();
        Length margin = plan.bindingMargin().max(zone);
        Gap gap = plan.row().gap();
        Gap.ThumbCut cut = hit && worst.pins().isEmpty() && gap != null ? gap.thumbCut() : null;
        Length limit = cut != null ? cut.depth().plus(plan.punchingTolerance()) : hit ? zone : margin;
        String kind = mark.kind().name().toLowerCase(Locale.ROOT);
        int count = fold.pages().size();
        String origin = Say.origin(s.place(fold.worstPage()).bindingEdge());
        Measures measures = s.measures();
        Length near = Length.ofMeasuredMm(mark.nearMm());
        StringBuilder message = new StringBuilder();
        if (count > 1) {
            message.append(Say.pages(count))
                    .append(": ")
                    .append(noun(mark.kind()))
                    .append(hit ? " in the holes" : " too near the binding edge")
                    .append(alike(fold))
                    .append(". Worst on page ");
        } else {
            message.append("Page ");
        }
        message.append(fold.worstPage())
                .append(": ")
                .append(noun(mark.kind()))
                .append(' ')
                .append(measures.beside(near, limit))
                .append(" from the binding edge; ")
                .append(
                        cut != null
                                ? "the hanger's thumb cut, tolerance included, reaches "
                                : hit ? "the holes, tolerance included, reach " : "minimum margin ")
                .append(measures.beside(limit, near))
                .append(worst.pins().isEmpty() ? ". At " : ". At " + Say.pins(worst.pins()) + ", ")
                .append(measures.marks(mark.alongStartMm(), mark.alongEndMm()))
                .append(" from ")
                .append(origin);
        if (!mark.words().isBlank()) {
            message.append(": ").append(Say.quote(mark.words()));
        }
        // rounded up, so that moving it by what is said does
        Length target = cut != null ? limit : margin;
        double move = Math.ceil(Math.max(0, target.mm() - mark.nearMm()) * 10) / 10;
        String remedy = "Have it moved " + measures.mark(move) + " away from the binding edge, "
                + (cut != null
                        ? "or make the thumb cut smaller (hanger)."
                        : hit
                                ? "or bind another edge (binding-edge)."
                                : mark.nearMm() < zone.mm()
                                        ? "or accept the risk. It lies between two holes; a shift of the punch may cut it."
                                        : "or accept a smaller margin, at least " + measures.mark(up(zone))
                                                + " (binding-margin).");
        if (mark.kind() == MarkKind.IMAGE && mark.stage() == Stage.ESTIMATE) {
            remedy = "Look at the page. If it is a photograph, accept this; otherwise move the words away from the"
                    + " binding edge.";
        }
        return new Finding(
                kind + (hit ? "-hit" : "-tight"),
                hit ? Severity.ERROR : Severity.WARNING,
                fold.pages(),
                message.append(". ").append(seen(s, fold)).append('.').toString(),
                remedy,
                mark.nearMm(),
                limit.mm(),
                new Finding.Span(mark.alongStartMm(), mark.alongEndMm()),
                new Finding.Seen(mark.stage(), worst.pins(), Printable.line(mark.words()), fold.places()));
    }

    private static Length up(Length length) {
        return Length.ofMeasuredMm(Math.ceil(length.mm() * 10) / 10);
    }

    private static String alike(MatterFold fold) {
        return !fold.alike()
                ? ""
                : fold.worst().mark().words().isBlank() ? ", in the same place on each" : ", the same words on each";
    }

    /** Which stage decided, and how exactly. */
    private static String seen(Situation s, MatterFold fold) {
        Mark mark = fold.worst().mark();
        return switch (mark.stage()) {
            case GEOMETRY -> "Measured from the outline";
            case ESTIMATE ->
                switch (mark.kind()) {
                    case ANNOTATION -> "Estimated: each viewer draws it differently";
                    case IMAGE ->
                        "Estimated: the picture runs through the binding edge and may be a photograph"
                                + ground(s, fold);
                    default -> "Estimated: its font is not in the file";
                };
            case RASTER -> "Measured from the drawn page, to 0.2 mm" + ground(s, fold);
        };
    }

    /** Says by what a picture through the edge was judged. */
    private static String ground(Situation s, MatterFold fold) {
        Mark mark = fold.worst().mark();
        EdgePicture.Nature nature =
                mark.stage() == Stage.ESTIMATE ? EdgePicture.Nature.IN_DOUBT : EdgePicture.Nature.PAGE;
        return s.verdicts().stream()
                .filter(v -> v.page() == fold.worstPage() && mark.kind() == MarkKind.IMAGE)
                .flatMap(v -> v.basics().edgePictures().stream())
                .filter(p -> p.nature() == nature)
                .map(p -> nature == EdgePicture.Nature.PAGE
                        ? ". The picture counts as a page or scan: one ground colour on " + p.groundPercent()
                                + " % of the edge"
                        : ". One ground colour on " + p.groundPercent()
                                + " % of the edge; a page has it on 90 % or more")
                .findFirst()
                .orElse("");
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
