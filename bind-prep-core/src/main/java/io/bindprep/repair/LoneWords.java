package io.bindprep.repair;

import io.bindprep.check.Say;
import io.bindprep.marks.Mark;
import io.bindprep.repair.LoneMove.Zone;
import io.bindprep.unit.Length;
import io.bindprep.wording.Counted;
import io.bindprep.wording.Measures;
import io.bindprep.wording.PageLists;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Words on what moves by itself while the text stays. */
final class LoneWords {
    private static final int MOST_RANGES = 8;

    private LoneWords() {}

    /** The page and the mark that decide how far what stands in a zone moves. */
    static String because(Zone zone, int page, Mark mark, double clearMm, Measures measures) {
        String what = mark.words().isBlank() ? "a mark " : "text (" + Say.quote(mark.words()) + ") ";
        Length near = Length.ofMeasuredMm(mark.nearMm());
        Length clear = Length.ofMeasuredMm(clearMm);
        return "Page " + page + " decides for the " + name(zone) + ": " + what + measures.beside(near, clear)
                + " from the binding edge has to reach " + measures.beside(clear, near) + ".";
    }

    private static String name(Zone zone) {
        return zone == Zone.SIDE ? "side margins" : zone.name().toLowerCase(Locale.ROOT) + "s";
    }

    static List<String> notes(List<LoneMove> moves) {
        List<String> notes = new ArrayList<>();
        notes.add("Only what stood too near moved, and what is set in line with it; the text stays. See that heads and"
                + " page numbers still stand well beside it.");
        List<Integer> inLine = moves.stream()
                .filter(m -> !m.near())
                .map(LoneMove::page)
                .sorted()
                .distinct()
                .toList();
        if (!inLine.isEmpty()) {
            notes.add("Moved alike to keep in line, though clear before: " + Counted.of(inLine.size(), "page") + " ("
                    + PageLists.compact(inLine, MOST_RANGES) + ").");
        }
        return notes;
    }
}
