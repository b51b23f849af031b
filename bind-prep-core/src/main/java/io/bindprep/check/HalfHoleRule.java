package io.bindprep.check;

import io.bindprep.binding.Hole;
import io.bindprep.binding.Plan;
import io.bindprep.block.PagePlace;
import io.bindprep.job.Trim;
import io.bindprep.page.PageFacts;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * {@code half-hole}: a leaf shorter at the binding edge than the others, flush with them at the head, ends in a hole of the
 * row; the tolerance counts. A page that lies on its side is the business of {@link SizeRule}.
 */
final class HalfHoleRule implements Rule {
    /** Within the widest cutting tolerance of ISO 216:2007, 7.1 a leaf is as long as the others. */
    private static final Length AS_LONG = Length.ofMm(3);

    private record Cut(Hole hole, Length end) {}

    @Override
    public List<Finding> find(Situation s) {
        Map<Integer, List<Integer>> pagesByPin = new TreeMap<>();
        Map<Integer, Cut> cuts = new LinkedHashMap<>();
        for (PageFacts p : s.document().pages()) {
            Cut cut = cut(s, p);
            if (cut != null) {
                pagesByPin
                        .computeIfAbsent(cut.hole().pin(), pin -> new ArrayList<>())
                        .add(p.page());
                cuts.putIfAbsent(cut.hole().pin(), cut);
            }
        }
        List<Finding> findings = new ArrayList<>();
        pagesByPin.forEach((pin, pages) -> {
            Cut cut = cuts.get(pin);
            if (cut != null) {
                findings.add(finding(s.measures(), s.plan(), cut, pages));
            }
        });
        return findings;
    }

    private static @Nullable Cut cut(Situation s, PageFacts p) {
        PagePlace place = s.place(p.page());
        Trim own = s.job().special().size(p.page()).orElse(null);
        Length end =
                own == null ? p.along(place.bindingEdge()) : place.bindingEdge().upright() ? own.height() : own.width();
        Plan plan = s.plan();
        Length across = place.bindingEdge().upright() ? p.trimWidth() : p.trimHeight();
        boolean onItsSide =
                own == null && across.minus(plan.row().length()).abs().compareTo(AS_LONG) <= 0;
        if (onItsSide || end.compareTo(plan.row().length().minus(AS_LONG)) >= 0) {
            return null;
        }
        Length reach = plan.holeAlong().half().plus(plan.punchingTolerance());
        return plan.row().holes().stream()
                .filter(h -> h.centre().minus(end).abs().compareTo(reach) < 0)
                .findFirst()
                .map(h -> new Cut(h, end))
                .orElse(null);
    }

    private static Finding finding(Measures measures, Plan plan, Cut cut, List<Integer> pages) {
        Length start = cut.hole().centre().minus(plan.holeAlong().half());
        Length end = cut.hole().centre().plus(plan.holeAlong().half());
        return Finding.measuredAlong(
                "half-hole",
                Severity.ERROR,
                pages,
                "The end of the leaf cuts through a hole on " + Say.pages(pages.size()) + ". The binding edge is "
                        + measures.mark(cut.end()) + " long; pin " + cut.hole().pin() + " cuts from "
                        + measures.marks(start.mm(), end.mm()) + ".",
                "Pull pin " + cut.hole().pin()
                        + " and punch these leaves separately, or have them made as long as the others.",
                cut.end().mm(),
                plan.row().length().mm(),
                new Finding.Span(start.mm(), end.mm()));
    }
}
