package io.bindprep.report.text;

import io.bindprep.block.Block;
import io.bindprep.check.Report;
import io.bindprep.page.Move;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.SplitReport;
import io.bindprep.report.words.SafetyLine;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.unit.Length;
import io.bindprep.wording.Counted;
import io.bindprep.wording.PageLists;

/** Writes what became of a split as one screen of text: the files, what is in each, then what to know. */
public final class SplitText {
    private static final int MOST_RANGES = 6;

    private final SplitReport split;
    private final Lines lines;

    private SplitText(SplitReport split, TextStyle style) {
        this.split = split;
        this.lines = new Lines(style);
    }

    /** The split as lines that end in a line feed. */
    public static String write(SplitReport split, TextStyle style) {
        return new SplitText(split, style).write();
    }

    private String write() {
        String file = split.before().document().file();
        if (split.volumes().isEmpty()) {
            lines.paragraph(Lines.Tint.BAD, "Not split, and nothing written: " + file + " is unchanged.");
            lines.blank();
            split.refusals().forEach(r -> lines.entry(Lines.Tint.BAD, "Why", r));
        } else {
            lines.paragraph(
                    Lines.Tint.GOOD,
                    "Written: " + Counted.of(split.volumes().size(), "volume") + " of " + file + ", "
                            + split.before().pages().size() + " pages.");
            lines.blank();
            for (int i = 0; i < split.volumes().size(); i++) {
                volume(i + 1, split.volumes().get(i));
            }
            lines.blank();
            split.notes().forEach(n -> lines.entry(Lines.Tint.CARE, "Note", n));
        }
        lines.blank();
        lines.paragraph(Lines.Tint.NONE, SafetyLine.TEXT);
        return lines.toString();
    }

    private void volume(int number, SplitReport.WrittenVolume part) {
        ShiftReport made = part.made();
        lines.entry(
                Lines.Tint.NONE,
                "Volume " + number,
                made.output() + ": pages " + PageLists.compact(part.pages(), MOST_RANGES) + " of the whole"
                        + (part.bookmark().isEmpty() ? "" : ", from \"" + Lines.shown(part.bookmark()) + "\"") + ".");
        Report after = made.after();
        if (after == null) {
            return;
        }
        Block block = after.block();
        String element = after.plan().element() == null
                ? "no element"
                : "element " + after.plan().element().name();
        lines.more(Counted.of(block.leaves().size(), "leaf") + " with its covers, "
                + after.measures().thickness(after.stack().nominal()) + ", " + element + ".");
        double most = made.moves().stream().mapToDouble(Move::awayMm).max().orElse(0);
        if (most > 0 || !made.blanks().isEmpty()) {
            lines.more((most > 0
                            ? "Content moved by up to " + after.measures().up(Length.ofMeasuredMm(most))
                                    + " away from the binding edge"
                            : "Nothing moved")
                    + (made.blanks().isEmpty()
                            ? "."
                            : "; " + Counted.of(made.blanks().size(), "blank page") + " added."));
        }
        lines.more(VerdictSentence.of(after));
        made.notes().forEach(lines::more);
    }
}
