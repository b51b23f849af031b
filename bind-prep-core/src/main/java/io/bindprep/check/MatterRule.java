package io.bindprep.check;

import io.bindprep.binding.Gap;
import io.bindprep.binding.Plan;
import io.bindprep.marks.Hit;
import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Verdict;
import io.bindprep.unit.Length;
import io.bindprep.unit.LengthText;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * {@code text-punched}, {@code text-tight} and so on for line, art, image, annotation: what the holes take, and what
 * stands too near. A page counts once for each kind, by its worse case.
 */
final class MatterRule implements Rule {
    private static final List<MarkKind> KINDS =
            List.of(MarkKind.TEXT, MarkKind.LINE, MarkKind.ART, MarkKind.IMAGE, MarkKind.ANNOTATION);

    /** Pages of one kind and verdict, and the hit nearest the bound edge among them. */
    private static final class Fold {
        private final List<Integer> pages = new ArrayList<>();
        private @Nullable Hit worst;
        private int worstPage;

        void add(int page, Hit hit) {
            if (pages.isEmpty() || pages.get(pages.size() - 1) != page) {
                pages.add(page);
            }
            if (worst == null || hit.mark().nearMm() < worst.mark().nearMm()) {
                worst = hit;
                worstPage = page;
            }
        }
    }

    @Override
    public List<Finding> find(Situation s) {
        List<Finding> findings = new ArrayList<>();
        for (MarkKind kind : KINDS) {
            Map<Verdict, Fold> folds = new EnumMap<>(Verdict.class);
            folds.put(Verdict.PUNCHED, new Fold());
            folds.put(Verdict.TIGHT, new Fold());
            for (PageVerdict page : s.verdicts()) {
                add(page, kind, folds);
            }
            folds.forEach((verdict, fold) -> {
                Hit worst = fold.worst;
                if (worst != null) {
                    findings.add(finding(s, verdict, fold, worst));
                }
            });
        }
        return findings;
    }

    private static void add(PageVerdict page, MarkKind kind, Map<Verdict, Fold> folds) {
        List<Hit> hits =
                page.hits().stream().filter(h -> h.mark().kind() == kind).toList();
        boolean punched = hits.stream().anyMatch(h -> h.verdict() == Verdict.PUNCHED);
        Verdict worse = punched ? Verdict.PUNCHED : Verdict.TIGHT;
        Fold fold = folds.get(worse);
        for (Hit hit : hits) {
            if (fold != null && hit.verdict() == worse) {
                fold.add(page.page(), hit);
            }
        }
    }

    private static Finding finding(Situation s, Verdict verdict, Fold fold, Hit worst) {
        Plan plan = s.plan();
        Mark mark = worst.mark();
        boolean punched = verdict == Verdict.PUNCHED;
        Length zone = plan.punchedZone();
        Length margin = plan.clearMargin().compareTo(zone) > 0 ? plan.clearMargin() : zone;
        Gap gap = plan.row().gap();
        Gap.ThumbCut cut = punched && worst.pin() == null && gap != null ? gap.thumbCut() : null;
        Length limit = cut != null ? cut.depth().plus(plan.registration()) : punched ? zone : margin;
        String kind = mark.kind().name().toLowerCase(Locale.ROOT);
        int count = fold.pages.size();
        String origin = Say.origin(s.place(fold.worstPage).boundEdge());
        StringBuilder message = new StringBuilder(noun(mark.kind()))
                .append(punched ? " would be punched on " : " stands too near the binding on ")
                .append(count == 1 ? "page " : Say.pages(count) + "; worst on page ")
                .append(fold.worstPage);
        if (worst.pin() != null) {
            message.append(" at pin ").append(worst.pin());
        }
        message.append(", ")
                .append(LengthText.mm(mark.nearMm()))
                .append(" from the bound edge where ")
                .append(
                        cut != null
                                ? "the hanger's thumb cut with its registration reaches to "
                                : punched ? "the holes with their registration reach to " : "live matter keeps ")
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
        String remedy = "Have it moved away from the bound edge by " + LengthText.mm(move) + ", to " + target.inMm()
                + ", "
                + (cut != null
                        ? "or make the thumb cut smaller (hanger)."
                        : punched
                                ? "or bind another edge (bound-edge)."
                                : mark.nearMm() < zone.mm()
                                        ? "or accept that a shift of the punch may cut it: it stands between two holes."
                                        : "or accept it by a smaller clear-margin, no less than " + zone.inMm() + ".");
        return new Finding(
                kind + (punched ? "-punched" : "-tight"),
                punched ? Severity.ERROR : Severity.WARNING,
                fold.pages,
                message.append('.').toString(),
                remedy,
                mark.nearMm(),
                limit.mm(),
                new Finding.Span(mark.alongStartMm(), mark.alongEndMm()));
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
