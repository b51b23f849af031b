package io.bindprep.repair;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * Refusal to write a repaired copy: each reason, and the words with the numbers and ways out. No words without a reason.
 *
 * @param reasons none where nothing is refused
 */
public record Refusal(Set<RefusalReason> reasons, List<String> said) {
    /** Nothing is refused. */
    public static final Refusal NONE = new Refusal(Set.of(), List.of());

    public Refusal {
        reasons = Set.copyOf(reasons);
        said = List.copyOf(said);
        if (reasons.isEmpty() != said.isEmpty()) {
            throw new IllegalArgumentException("a refusal is words with a reason");
        }
    }

    public static Refusal of(RefusalReason reason, String... said) {
        return new Refusal(Set.of(reason), List.of(said));
    }

    public static Refusal of(RefusalReason reason, Collection<String> said) {
        return new Refusal(Set.of(reason), List.copyOf(said));
    }

    public boolean isEmpty() {
        return reasons.isEmpty();
    }

    /** This and another. */
    public Refusal and(Refusal other) {
        Set<RefusalReason> all = EnumSet.noneOf(RefusalReason.class);
        all.addAll(reasons);
        all.addAll(other.reasons);
        List<String> words = new ArrayList<>(said);
        words.addAll(other.said);
        return new Refusal(all, words);
    }

    /** The same with other words. */
    public Refusal worded(UnaryOperator<String> words) {
        return new Refusal(reasons, said.stream().map(words).toList());
    }

    /** The same with a way out behind its reasons; nothing where nothing is refused. */
    public Refusal wayOut(String words) {
        return isEmpty() ? this : and(new Refusal(reasons, List.of(words)));
    }
}
