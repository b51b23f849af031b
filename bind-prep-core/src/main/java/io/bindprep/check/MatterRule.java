package io.bindprep.check;

import io.bindprep.binding.Gap;
import io.bindprep.binding.Plan;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
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
        StringBuilder message = new StringBuilder(noun(mark.kind()))
                .append(hit ? " would be punched on " : " stands too near the binding on ")
                .append(count == 1 ? "page " : Say.pages(count) + alike(fold) + "; worst on page ")
                .append(fold.worstPage());
        if (!worst.pins().isEmpty()) {
            message.append(" at ").append(Say.pins(worst.pins()));
        }
        message.append(", ")
                .append(LengthText.mm(mark.nearMm()))
                .append(" from the binding edge where ")
                .append(
                        cut != null
                                ? "the hanger's thumb cut with its punching tolerance reaches to "
                                : hit ? "the holes with their punching tolerance reach to " : "live matter keeps ")
                .append(limit.inMm())
                .append(", ")
                .append(LengthText.mm(mark.alongStartMm(), mark.alongEndMm()))
                .append(" from ")
                .append(origin);
        if (!mark.words().isBlank()) {
            message.append(": ").append(Say.quote(mark.words()));
        }
        // rounded up, so that moving it by what is said does
        Length target = cut != null ? limit : margin;
        double move = Math.ceil(Math.max(0, target.mm() - mark.nearMm()) * 10) / 10;
        String remedy = "Have it moved away from the binding edge by " + LengthText.mm(move) + ", to " + target.inMm()
                + ", "
                + (cut != null
                        ? "or make the thumb cut smaller (hanger)."
                        : hit
                                ? "or bind another edge (binding-edge)."
                                : mark.nearMm() < zone.mm()
                                        ? "or accept that a shift of the punch may cut it: it stands between two holes."
                                        : "or accept it by a smaller binding-margin, no less than " + zone.inMm()
                                                + ".");
        return new Finding(
                kind + (hit ? "-hit" : "-tight"),
                hit ? Severity.ERROR : Severity.WARNING,
                fold.pages(),
                message.append(". ").append(seen(mark)).append('.').toString(),
                remedy,
                mark.nearMm(),
                limit.mm(),
                new Finding.Span(mark.alongStartMm(), mark.alongEndMm()),
                new Finding.Seen(mark.stage(), worst.pins(), Say.clean(mark.words())));
    }

    private static String alike(MatterFold fold) {
        return !fold.alike()
                ? ""
                : fold.worst().mark().words().isBlank() ? ", in the same place on each" : ", the same words on each";
    }

    /** Which stage decided, and how exactly. */
    private static String seen(Mark mark) {
        return switch (mark.stage()) {
            case GEOMETRY -> "Measured by its outline";
            case ESTIMATE ->
                mark.kind() == MarkKind.ANNOTATION
                        ? "Estimated, as each reader draws it its own way"
                        : "Estimated, as its font is not in the file";
            case RASTER -> "Measured as drawn, to 0.2 mm";
        };
    }

    private static String noun(MarkKind kind) {
        return switch (kind) {
            case TEXT -> "Text";
            case LINE -> "A line";
            case ART -> "Drawn art";
            case IMAGE -> "A picture";
            case ANNOTATION -> "An annotation";
            case BACKGROUND -> "A background";
        };
    }
}
