package io.bindprep.report.html;

import io.bindprep.check.Report;
import io.bindprep.marks.Verdict;
import io.bindprep.picture.PicturePair;
import io.bindprep.repair.ShiftReport;
import io.bindprep.report.words.RepairWords;
import io.bindprep.report.words.SafetyLine;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.wording.Counted;
import io.bindprep.wording.FileNames;
import java.util.ArrayList;
import java.util.List;

/**
 * A repair as it is shown.
 *
 * @param title the document's, else the name of its file
 * @param tone "good", "care" or "bad"
 * @param verdict of the check of the copy; empty where there is none
 * @param counts pages by verdict, before and after
 * @param notes what decided, then what to know
 * @param bleeds whether pages are shown with bleed
 * @param more how many changed pages are not shown
 */
public record RepairView(
        String title,
        String file,
        String pageCount,
        String tone,
        String sentence,
        String verdict,
        List<Row> counts,
        List<String> moves,
        List<String> refusals,
        List<String> because,
        List<String> notes,
        List<Pair> pairs,
        int more,
        boolean bleeds,
        String caution) {
    /** Pages by verdict. */
    public record Row(String label, List<String> counts) {}

    /** One page before and after, with the number of each. */
    public record Pair(PageView before, PageView after) {}

    static RepairView of(ShiftReport shift, List<PicturePair> pictures) {
        Report before = shift.before();
        Report after = shift.after();
        boolean refused = shift.outcome() == ShiftReport.Result.REFUSED;
        List<Row> counts = new ArrayList<>(List.of(row("Before", before)));
        List<Pair> pairs = new ArrayList<>();
        if (after != null) {
            counts.add(row("After", after));
            for (PicturePair pair : pictures) {
                pairs.add(new Pair(
                        PageView.of(before, before.pages().get(pair.before().page() - 1), pair.before()),
                        PageView.of(after, after.pages().get(pair.after().page() - 1), pair.after())));
            }
        }
        return new RepairView(
                Texts.clean(before.document().heading()),
                Texts.clean(before.document().fileName()),
                Counted.of(before.pages().size(), "page"),
                refused ? "bad" : shift.notes().isEmpty() ? "good" : "care",
                Texts.clean(RepairWords.outcome(shift, FileNames::last)),
                refused || after == null ? "" : VerdictSentence.of(after),
                counts,
                RepairWords.moves(shift),
                clean(shift.refusals()),
                clean(shift.because()),
                clean(shift.notes()),
                pairs,
                refused ? 0 : shift.changedPages().size() - pairs.size(),
                !shift.bleeds().isEmpty(),
                SafetyLine.TEXT);
    }

    private static List<String> clean(List<String> said) {
        return said.stream().map(Texts::clean).toList();
    }

    private static Row row(String label, Report report) {
        List<String> counts = new ArrayList<>();
        counts.add(Integer.toString(report.pages().size()));
        for (Verdict verdict : Verdict.values()) {
            counts.add(Long.toString(report.pages().stream()
                    .filter(p -> p.verdict().verdict() == verdict)
                    .count()));
        }
        return new Row(label, counts);
    }
}
