package io.bindprep.check;

import io.bindprep.block.Leaf;
import io.bindprep.unit.Length;
import java.util.List;

/** {@code tabs-beyond-covers}: tabs stand out beyond covers that are cut to the trim. */
final class TabRule implements Rule {
    @Override
    public List<Finding> find(Situation s) {
        Length most = s.block().leaves().stream()
                .map(Leaf::extension)
                .max(Length::compareTo)
                .orElse(Length.ZERO);
        if (most.equals(Length.ZERO) || s.block().covers() == 0) {
            return List.of();
        }
        return List.of(Say.document(
                "tabs-beyond-covers",
                Severity.NOTE,
                "Tabs extend " + s.measures().set(most) + " beyond the covers, which are cut to the trim.",
                "To protect the tabs, cut the covers wider by as much."));
    }
}
