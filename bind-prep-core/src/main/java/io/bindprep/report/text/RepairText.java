package io.bindprep.report.text;

import io.bindprep.check.Report;
import io.bindprep.marks.Verdict;
import io.bindprep.repair.ShiftReport;
import io.bindprep.report.words.RepairWords;
import io.bindprep.report.words.SafetyLine;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.wording.Counted;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Writes what became of a repair as one screen of text: what was done first, then before and after, then what to know. */
public final class RepairText {
    private static final int MOST_REFUSALS = 8;
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
        lines.paragraph(
                shift.outcome() == ShiftReport.Result.REFUSED ? Lines.Tint.BAD : Lines.Tint.GOOD,
                RepairWords.outcome(shift, UnaryOperator.identity()));
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

    private void moves() {
        List<String> moves = RepairWords.moves(shift);
        if (moves.isEmpty()) {
            return;
        }
        lines.blank();
        lines.entry(Lines.Tint.NONE, "Moved", moves.get(0));
        moves.subList(1, moves.size()).forEach(m -> lines.entry(Lines.Tint.NONE, "", m));
    }
}
