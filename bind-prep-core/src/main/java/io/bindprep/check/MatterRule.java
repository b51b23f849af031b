package io.bindprep.check;

import io.bindprep.marks.Mark;
import io.bindprep.marks.MarkKind;
import io.bindprep.marks.Verdict;
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
                MatterFold.of(s.verdicts(), kind, verdict)
                        .forEach(fold -> findings.add(finding(new MatterCase(s, fold, verdict == Verdict.HIT))));
            }
        }
        return findings;
    }

    private static Finding finding(MatterCase c) {
        Mark mark = c.mark();
        MatterWords words = new MatterWords(c);
        return Finding.ofMark(
                mark.kind().name().toLowerCase(Locale.ROOT) + (c.hit() ? "-hit" : "-tight"),
                c.hit() ? Severity.ERROR : Severity.WARNING,
                c.fold().pages(),
                words.message(),
                words.remedy(),
                mark.nearMm(),
                c.limit().mm(),
                new Finding.Span(mark.alongStartMm(), mark.alongEndMm()),
                new Finding.Seen(
                        mark.stage(),
                        c.worst().pins(),
                        Printable.line(mark.words()),
                        c.fold().places()));
    }
}
