package io.bindprep.repair;

import io.bindprep.page.Move;
import java.util.List;

/**
 * How each page's content moves, or why it does not.
 *
 * @param moves by page, page n at index n - 1; none where the repair is refused
 * @param because which pages decided, with their numbers
 * @param refusals why it cannot be done, with the numbers; empty where it can
 */
public record MovePlan(List<Move> moves, List<String> because, List<String> refusals) {
    public MovePlan {
        moves = List.copyOf(moves);
        because = List.copyOf(because);
        refusals = List.copyOf(refusals);
    }

    /** Whether nothing is to be moved. */
    public boolean nothing() {
        return moves.stream().allMatch(Move::nothing);
    }
}
