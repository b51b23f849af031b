package io.bindprep.repair;

import io.bindprep.page.Move;
import java.util.List;

/**
 * Moves of each page's content, or the reasons against.
 *
 * @param moves by page, page n at index n - 1; none where the repair is refused
 * @param because which pages decided, with their numbers
 * @param refusal why it cannot be done, with the numbers; empty where it can
 */
public record MovePlan(List<Move> moves, List<String> because, Refusal refusal) {
    public MovePlan {
        moves = List.copyOf(moves);
        because = List.copyOf(because);
    }

    /** Returns true if nothing is to be moved. */
    public boolean nothing() {
        return moves.stream().allMatch(Move::nothing);
    }
}
