package io.bindprep.check;

import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** {@code page-unchecked}: a page that could not be analysed whole; never good. */
final class UncheckedRule implements Rule {
    static final String ID = "page-unchecked";
    private static final int MOST_REASONS = 10;

    @Override
    public List<Finding> find(Situation s) {
        Map<String, List<Integer>> byReason = new LinkedHashMap<>();
        for (PageVerdict v : s.verdicts()) {
            if (v.verdict() == Verdict.UNCHECKED) {
                String reason = Objects.requireNonNullElse(v.unchecked(), "no reason was given");
                boolean named = byReason.size() < MOST_REASONS || byReason.containsKey(reason);
                String group = named ? reason : "various other reasons";
                byReason.computeIfAbsent(group, r -> new ArrayList<>()).add(v.page());
            }
        }
        return byReason.entrySet().stream()
                .map(e -> finding(e.getKey(), e.getValue()))
                .toList();
    }

    private static Finding finding(String reason, List<Integer> pages) {
        return Say.onPages(
                ID,
                Severity.ERROR,
                pages,
                Say.pages(pages.size()) + " could not be checked: " + reason,
                UncheckedRemedies.of(reason));
    }
}
