package io.bindprep.day;

import java.util.ArrayList;
import java.util.List;

/**
 * Number of times that each setting is made anew, compared setting by setting, the dearest first.
 *
 * @param counts one for each {@link Setting}, in their order
 */
public record Changes(List<Integer> counts) implements Comparable<Changes> {
    static final Changes NONE = new Changes(java.util.Collections.nCopies(Setting.values().length, 0));

    public Changes {
        counts = List.copyOf(counts);
    }

    static Changes between(PunchState before, PunchState after) {
        List<Integer> counts = new ArrayList<>();
        for (Setting setting : Setting.values()) {
            counts.add(after.changes(setting, before) ? 1 : 0);
        }
        return new Changes(counts);
    }

    Changes plus(Changes other) {
        List<Integer> sums = new ArrayList<>();
        for (int i = 0; i < counts.size(); i++) {
            sums.add(counts.get(i) + other.counts.get(i));
        }
        return new Changes(sums);
    }

    /** Number of times that this setting is made anew. */
    public int of(Setting setting) {
        return counts.get(setting.ordinal());
    }

    /** All of them. */
    public int total() {
        return counts.stream().mapToInt(Integer::intValue).sum();
    }

    @Override
    public int compareTo(Changes other) {
        for (int i = 0; i < counts.size(); i++) {
            int order = counts.get(i).compareTo(other.counts.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }
}
