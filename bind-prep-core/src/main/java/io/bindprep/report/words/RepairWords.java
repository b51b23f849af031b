package io.bindprep.report.words;

import io.bindprep.page.Move;
import io.bindprep.repair.LoneMove;
import io.bindprep.repair.ShiftReport;
import io.bindprep.unit.Length;
import io.bindprep.wording.Counted;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.Measures;
import io.bindprep.wording.PageLists;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Sentences on what a repair did. */
public final class RepairWords {
    private static final int MOST_MOVES = 12;
    private static final int MOST_RANGES = 6;

    private RepairWords() {}

    /**
     * Fate of the file, in one sentence or two.
     *
     * @param named how a file is called: a page that is passed on names no folder
     */
    public static String outcome(ShiftReport shift, UnaryOperator<String> named) {
        return switch (shift.outcome()) {
            case CHANGED -> done(shift, named.apply(shift.output()));
            case COPIED ->
                "Nothing to move: every page is clear. " + named.apply(shift.output())
                        + " is a copy of the file as it was.";
            case REFUSED ->
                "Not repaired, and nothing written: "
                        + named.apply(shift.before().document().file()) + " is unchanged.";
        };
    }

    private static String done(ShiftReport shift, String output) {
        List<String> done = new ArrayList<>();
        long moved = shift.moves().stream().filter(m -> !m.nothing()).count();
        long scaled = shift.moves().stream().filter(Move::scales).count();
        if (moved > 0) {
            done.add("the content of " + Counted.of(moved, "page") + " moved"
                    + (scaled == moved
                            ? " and made smaller"
                            : scaled > 0 ? ", " + scaled + " of them made smaller" : ""));
        }
        long alone = shift.alone().stream().map(LoneMove::page).distinct().count();
        if (alone > 0) {
            done.add("only what stood too near moved, on " + Counted.of(alone, "page"));
        }
        if (!shift.bleeds().isEmpty()) {
            done.add("bleed made on " + Counted.of(shift.bleeds().size(), "page"));
        }
        if (!shift.blanks().isEmpty()) {
            done.add(Counted.of(shift.blanks().size(), "blank page") + " added");
        }
        return "Written: " + output + ", " + String.join(", ", done) + ".";
    }

    /** Moves with their pages, the longest first. */
    public static List<String> moves(ShiftReport shift) {
        List<String> said = new ArrayList<>();
        for (LoneMove.Zone zone : LoneMove.Zone.values()) {
            List<LoneMove> here =
                    shift.alone().stream().filter(m -> m.zone() == zone).toList();
            if (!here.isEmpty()) {
                String what = switch (zone) {
                    case HEAD -> "what stands at the head";
                    case FOOT -> "what stands at the foot";
                    case SIDE -> "what stands beside the text";
                };
                said.add(said(
                        shift.before().measures(),
                        here.get(0).awayMm(),
                        what,
                        here.stream().map(LoneMove::page).distinct().sorted().toList()));
            }
        }
        said.addAll(alike(shift));
        return said;
    }

    /** Pages that move alike together. */
    private static List<String> alike(ShiftReport shift) {
        Map<Move, List<Integer>> alike = new LinkedHashMap<>();
        for (int page = 1; page <= shift.moves().size(); page++) {
            Move move = shift.moves().get(page - 1);
            if (!move.nothing()) {
                alike.computeIfAbsent(
                                new Move(shift.moves().get(0).bindingEdge(), move.awayMm(), move.scale()),
                                k -> new ArrayList<>())
                        .add(page);
            }
        }
        List<Map.Entry<Move, List<Integer>>> groups = new ArrayList<>(alike.entrySet());
        groups.sort(Comparator.comparing(
                        (Map.Entry<Move, List<Integer>> g) -> g.getKey().awayMm())
                .reversed());
        List<String> said = new ArrayList<>();
        for (Map.Entry<Move, List<Integer>> group : groups.subList(0, Math.min(MOST_MOVES, groups.size()))) {
            Move move = group.getKey();
            said.add(said(
                    shift.before().measures(),
                    move.awayMm(),
                    move.scales() ? "scaled to " + percent(move.scale()) : "at full size",
                    group.getValue()));
        }
        int more = groups.size() - MOST_MOVES;
        if (more > 0) {
            said.add("and " + Counted.of(more, "more move") + ", none of them longer.");
        }
        return said;
    }

    private static String said(Measures measures, double awayMm, String what, List<Integer> pages) {
        return measures.up(Length.ofMeasuredMm(awayMm)) + " away from the binding edge, " + what + ": "
                + PageLists.named(pages, MOST_RANGES);
    }

    private static String percent(double scale) {
        return LengthText.plain(BigDecimal.valueOf(scale).movePointRight(2), 2) + " %";
    }
}
