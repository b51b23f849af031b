package io.bindprep.report.text;

import io.bindprep.check.Report;
import io.bindprep.marks.Verdict;
import io.bindprep.page.Move;
import io.bindprep.repair.ShiftReport;
import io.bindprep.report.words.SafetyLine;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.unit.Length;
import io.bindprep.wording.Counted;
import io.bindprep.wording.LengthText;
import io.bindprep.wording.PageLists;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes what became of a repair as one screen of text: what was done first, then before and after, then what to know. */
public final class RepairText {
    private static final int MOST_MOVES = 12;
    private static final int MOST_REFUSALS = 8;
    private static final int MOST_RANGES = 6;
    private static final int CELL = 9;

    private final ShiftReport shift;
    private final Lines lines;

    private RepairText(ShiftReport shift, TextStyle style) {
        this.shift = shift;
        this.lines = new Lines(style);
    }

    /** The repair as lines that end in a line feed. */
    public static String write(ShiftReport shift, TextStyle style) {
        return new RepairText(shift, style).write();
    }

    private String write() {
        switch (shift.outcome()) {
            case CHANGED -> lines.paragraph(Lines.Tint.GOOD, done());
            case COPIED ->
                lines.paragraph(
                        Lines.Tint.GOOD,
                        "Nothing to move: every page is clear. " + shift.output()
                                + " is a copy of the file as it was.");
            case REFUSED ->
                lines.paragraph(
                        Lines.Tint.BAD,
                        "Not repaired, and nothing written: "
                                + shift.before().document().file() + " stays as it is.");
        }
        lines.blank();
        table();
        if (!shift.refusals().isEmpty()) {
            lines.blank();
            shift.refusals().stream().limit(MOST_REFUSALS).forEach(r -> lines.entry(Lines.Tint.BAD, "Why", r));
            int more = shift.refusals().size() - MOST_REFUSALS;
            if (more > 0) {
                lines.more("and " + Counted.of(more, "more reason") + ".");
            }
        }
        moves();
        shift.because().forEach(b -> lines.entry(Lines.Tint.NONE, "Because", b));
        if (!shift.notes().isEmpty()) {
            lines.blank();
            shift.notes().forEach(n -> lines.entry(Lines.Tint.CARE, "Note", n));
        }
        Report after = shift.after();
        if (after != null && shift.outcome() != ShiftReport.Result.REFUSED) {
            lines.blank();
            lines.entry(Lines.Tint.NONE, "Check", VerdictSentence.of(after));
            lines.more(
                    "Print a sheet or two at full size, not fitted to the page, and hold them against the old ones.");
        }
        lines.blank();
        lines.paragraph(Lines.Tint.NONE, SafetyLine.TEXT);
        return lines.toString();
    }

    private String done() {
        List<String> done = new ArrayList<>();
        long moved = shift.moves().stream().filter(m -> !m.nothing()).count();
        long scaled = shift.moves().stream().filter(Move::scales).count();
        if (moved > 0) {
            done.add("the content of " + Counted.of(moved, "page") + " moved"
                    + (scaled == moved
                            ? " and made smaller"
                            : scaled > 0 ? ", " + scaled + " of them made smaller" : ""));
        }
        if (!shift.blanks().isEmpty()) {
            done.add(Counted.of(shift.blanks().size(), "blank page") + " added");
        }
        return "Written: " + shift.output() + ", " + String.join(", ", done) + ".";
    }

    private void table() {
        lines.row("", CELL, List.of("pages", "clear", "tight", "hit", "not checked"));
        lines.row("Before", CELL, counts(shift.before()));
        Report after = shift.after();
        if (after != null) {
            lines.row("After", CELL, counts(after));
        }
    }

    private static List<String> counts(Report report) {
        List<String> cells =
                new ArrayList<>(List.of(Integer.toString(report.pages().size())));
        for (Verdict verdict : Verdict.values()) {
            cells.add(Long.toString(report.pages().stream()
                    .filter(p -> p.verdict().verdict() == verdict)
                    .count()));
        }
        return cells;
    }

    /** Pages that move alike together, those that move most first. */
    private void moves() {
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
        if (alike.isEmpty()) {
            return;
        }
        lines.blank();
        List<Map.Entry<Move, List<Integer>>> groups = new ArrayList<>(alike.entrySet());
        groups.sort(Comparator.comparing(
                        (Map.Entry<Move, List<Integer>> g) -> g.getKey().awayMm())
                .reversed());
        String label = "Moved";
        for (Map.Entry<Move, List<Integer>> group : groups.subList(0, Math.min(MOST_MOVES, groups.size()))) {
            Move move = group.getKey();
            lines.entry(
                    Lines.Tint.NONE,
                    label,
                    Length.ofMeasuredMm(move.awayMm()).inMm() + " away from the binding edge, "
                            + (move.scales() ? "scaled to " + percent(move.scale()) : "at full size") + ": "
                            + (group.getValue().size() == 1 ? "page " : "pages ")
                            + PageLists.compact(group.getValue(), MOST_RANGES));
            label = "";
        }
        int more = groups.size() - MOST_MOVES;
        if (more > 0) {
            lines.more("and " + Counted.of(more, "more move") + ", none of them longer.");
        }
    }

    private static String percent(double scale) {
        return LengthText.plain(BigDecimal.valueOf(scale).movePointRight(2), 2) + " %";
    }
}
