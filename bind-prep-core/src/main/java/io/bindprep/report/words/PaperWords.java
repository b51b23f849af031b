package io.bindprep.report.words;

import io.bindprep.paper.StackReason;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.Measures;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/** English of how a stack's thickness and weight came about. */
final class PaperWords {
    private static final int MOST_SIZES = 3;

    private PaperWords() {}

    static String of(StackReason reason, Measures m) {
        if (reason instanceof StackReason.LeavesOf r) {
            return r.leaves() + (r.leaves() == 1 ? " leaf of " : " leaves of ")
                    + r.stock().name()
                    + (r.layers() == 1 ? "" : ", folded to " + r.layers() + " layers,") + " at "
                    + m.caliper(r.stock().caliperUm()) + " +-"
                    + m.caliper(r.stock().toleranceUm()) + " make "
                    + mm(r.thicknessUm(), m)
                    + " (" + r.stock().source() + ")";
        }
        if (reason instanceof StackReason.Tolerances r) {
            return "tolerances are added over the leaves, for one lot drifts one way: " + mm(r.nominalUm(), m) + " +-"
                    + mm(r.driftUm(), m);
        }
        if (reason instanceof StackReason.NoWeight r) {
            return "no weight: the grammage of " + r.stock() + " is not known";
        }
        StackReason.Weight r = (StackReason.Weight) reason;
        List<String> sizes = r.sizes().stream()
                .map(s -> m.whole() ? s.width().inMm() + " x " + s.height().inMm() : m.area(s.width(), s.height()))
                .distinct()
                .toList();
        return "one copy weighs " + (m.whole() ? LengthText.plain(r.grams(), 0) + " g" : m.weight(r.grams()))
                + ": grammage over leaves of "
                + sizes.stream().limit(MOST_SIZES).collect(Collectors.joining(", "))
                + (sizes.size() > MOST_SIZES ? " and other sizes" : "");
    }

    private static String mm(BigDecimal um, Measures m) {
        return m.thickness(Length.ofMicrometres(um));
    }
}
