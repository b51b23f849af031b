package io.bindprep.repair;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Moves of single things, or the reasons against.
 *
 * @param because which pages decided
 * @param notes what to know of things that move without being near the holes
 * @param refusal why it cannot be done; empty where it can
 */
public record LonePlan(List<LoneMove> moves, List<String> because, List<String> notes, Refusal refusal) {
    /** Nothing moves. */
    public static final LonePlan NONE = new LonePlan(List.of(), List.of(), List.of(), Refusal.NONE);

    public LonePlan {
        moves = List.copyOf(moves);
        because = List.copyOf(because);
        notes = List.copyOf(notes);
    }

    /** All moves in a few characters, for an identifier. */
    public String told() {
        return moves.stream()
                .map(m -> " " + m.page() + ":" + m.zone() + ":" + m.awayMm())
                .collect(Collectors.joining());
    }
}
