package io.bindprep.repair;

import io.bindprep.check.Report;
import io.bindprep.page.Move;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Result of a repair.
 *
 * @param output the name of the file that was to be written, as the caller gave it
 * @param before the document as it was
 * @param after the document as it was written, or as it would have been; null where nothing was made
 * @param moves by page of the input, page n at index n - 1; none where the repair was refused
 * @param alone what moved by itself, where only that was to move
 * @param blanks pages of the input behind which a blank page was put
 * @param bleeds pages of the input at whose binding edge bleed was made
 * @param because which pages decided how far content moves
 * @param notes what to know of the file that was written
 * @param refusals why no file was written, in words; empty where one was
 * @param reasons the same for a machine; empty where a file was written
 */
public record ShiftReport(
        Result outcome,
        String output,
        Report before,
        @Nullable Report after,
        List<Move> moves,
        List<LoneMove> alone,
        List<Integer> blanks,
        List<Integer> bleeds,
        List<String> because,
        List<String> notes,
        List<String> refusals,
        Set<RefusalReason> reasons) {
    /** Result of writing. */
    public enum Result {
        /** A file with content moved or pages added; the check confirmed it. */
        CHANGED,
        /** A copy of the input, which needed nothing. */
        COPIED,
        /** Nothing. */
        REFUSED
    }

    public ShiftReport {
        moves = List.copyOf(moves);
        alone = List.copyOf(alone);
        blanks = List.copyOf(blanks);
        bleeds = List.copyOf(bleeds);
        because = List.copyOf(because);
        notes = List.copyOf(notes);
        refusals = List.copyOf(refusals);
        reasons = Set.copyOf(reasons);
        if (reasons.isEmpty() == (outcome == Result.REFUSED)) {
            throw new IllegalArgumentException("a refusal has a reason, and nothing else has");
        }
    }

    /** Pages of the input on which anything moved. */
    public List<Integer> changedPages() {
        Stream<Integer> whole = IntStream.rangeClosed(1, moves.size())
                .filter(p -> !moves.get(p - 1).nothing())
                .boxed();
        return Stream.of(whole, alone.stream().map(LoneMove::page), bleeds.stream())
                .flatMap(pages -> pages)
                .sorted()
                .distinct()
                .toList();
    }

    /** Number in the output of a page of the input, once blank pages have come in. */
    public int numberAfter(int page) {
        return page + (int) blanks.stream().filter(b -> b < page).count();
    }
}
