package io.bindprep.stage.repair;

import io.bindprep.check.Report;
import io.bindprep.files.PdfSource;
import io.bindprep.files.Scratch;
import io.bindprep.job.Job;
import io.bindprep.marks.MarkKind;
import io.bindprep.page.Move;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.pdf.edit.CopyCheck;
import io.bindprep.pdf.edit.EditedPdf;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.BlankBacks;
import io.bindprep.repair.Refusal;
import io.bindprep.repair.RefusalReason;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ShiftRequest;
import io.bindprep.stage.DocumentCheck;
import io.bindprep.stage.TimeLimit;
import io.bindprep.wording.PageLists;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A working copy with the content moved, opened anew and checked before it takes the place of a file. */
final class ChangedCopy {
    private final ShiftRequest request;
    private final ShiftSettings settings;
    private final CheckRequest check;
    private final Report before;
    private final List<Integer> blanks;
    private final Planned planned;
    private final PaintedPages found;
    private final Path file;
    private final Map<Integer, Set<MarkKind>> dropped = new TreeMap<>();
    private final List<Integer> unmarked = new ArrayList<>();
    private final List<Integer> reach = new ArrayList<>();
    private final MadeBleed bleed;
    private Set<Integer> strayed = Set.of();

    ChangedCopy(
            ShiftRequest request,
            CheckRequest check,
            Report before,
            List<Integer> blanks,
            Planned planned,
            PaintedPages found,
            Path file) {
        this.request = request;
        this.settings = request.settings();
        this.check = check;
        this.before = before;
        this.blanks = blanks;
        this.planned = planned;
        this.found = found;
        this.file = file;
        this.bleed = new MadeBleed(before, settings, this::numberAfter);
    }

    private int numberAfter(int page) {
        return page + (int) blanks.stream().filter(b -> b < page).count();
    }

    /** Bleed that was made. */
    MadeBleed bleed() {
        return bleed;
    }

    /** Kinds of what was left out beyond the trim, by page. */
    Map<Integer, Set<MarkKind>> dropped() {
        return dropped;
    }

    /** Pages without room for the crop marks that were asked for. */
    List<Integer> unmarked() {
        return unmarked;
    }

    /** Pages on which more moved than was meant to. */
    Set<Integer> strayed() {
        return strayed;
    }

    /** Outcome of writing it: its check, or why it is no good; one of the two is null. */
    record Made(@Nullable Report after, Refusal refusal) {}

    /**
     * Writes it anew and checks it.
     *
     * @param cut pages on which content is cut at the edge
     */
    Made make(Set<Integer> cut) throws UnreadableInputException, SettingException, IOException {
        Refusal refusal = TimeLimit.run(check.name(), limit -> {
            try (OutputStream out = Scratch.write(file)) {
                write(limit, cut, out);
            }
            Refusal without = settings.extendBleed() ? extended(limit) : Refusal.NONE;
            return without.isEmpty()
                    ? CopyCheck.fault(file, reach)
                            .map(fault -> Refusal.of(RefusalReason.NOT_WHOLE, fault))
                            .orElse(Refusal.NONE)
                    : without;
        });
        if (!refusal.isEmpty()) {
            return new Made(null, refusal);
        }
        Job job = BlankBacks.job(check.job(), blanks);
        CheckRequest again = new CheckRequest(file, request.outputName(), job, null, check.progress(), check.helpers());
        if (planned.alone().moves().isEmpty()) {
            return new Made(DocumentCheck.run(again), Refusal.NONE);
        }
        LoneWatch watch = new LoneWatch(planned.alone(), found, this::numberAfter);
        Report after = DocumentCheck.run(again, watch);
        strayed = watch.strayed(check.source(), new PdfSource(file, check.name(), null));
        return new Made(after, Refusal.NONE);
    }

    private Refusal extended(TimeLimit limit) throws UnreadableInputException, IOException {
        Refusal refusal = bleed.make(file, limit);
        if (!refusal.isEmpty()) {
            return refusal;
        }
        Set<Integer> lacking = bleed.lacking(file, limit);
        return lacking.isEmpty()
                ? Refusal.NONE
                : Refusal.of(
                        RefusalReason.NO_BLEED,
                        "The bleed made would be too short on " + PageLists.named(lacking)
                                + ". Ask for an export with bleed.");
    }

    private void write(TimeLimit limit, Set<Integer> cut, OutputStream out)
            throws UnreadableInputException, IOException {
        try (OpenedPdf pdf = Intake.known(check.source(), before.document().sha256())) {
            limit.extendFor(pdf.facts().pages().size());
            List<Move> moves = planned.plan().moves();
            EditedPdf edited = pdf.edit();
            edited.drawMarks(settings.marks());
            if (edited.signatures() > 0) {
                edited.dropSignatures();
            }
            dropped.clear();
            reach.clear();
            for (int page = 1; page <= moves.size(); page++) {
                reach.add(edited.reach(page));
                if (blanks.contains(page)) {
                    reach.add(0);
                }
                Move move = moves.get(page - 1);
                if (!move.nothing()) {
                    Set<MarkKind> gone = edited.move(page, move, beyond(page, cut));
                    if (!gone.isEmpty()) {
                        dropped.put(page, gone);
                    }
                }
            }
            LoneRepair.apply(edited, planned.alone(), found);
            unmarked.clear();
            unmarked.addAll(edited.withoutRoomForMarks());
            edited.blanksAfter(blanks);
            edited.save(
                    out,
                    moves + " " + blanks + " " + cut + (settings.marks() ? " marks" : "")
                            + planned.alone().told());
        }
    }

    private EditedPdf.Beyond beyond(int page, Set<Integer> cut) {
        if (cut.contains(page)) {
            return EditedPdf.Beyond.CUT;
        }
        boolean background = before.pages().get(page - 1).verdict().background();
        return background ? EditedPdf.Beyond.STAYS : EditedPdf.Beyond.MOVES;
    }
}
