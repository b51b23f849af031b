package io.bindprep.stage.repair;

import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.files.Scratch;
import io.bindprep.files.WholeFile;
import io.bindprep.job.Job;
import io.bindprep.job.PageRange;
import io.bindprep.job.Sides;
import io.bindprep.marks.Mark;
import io.bindprep.marks.PageJudge;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Verdict;
import io.bindprep.page.Move;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.pdf.edit.EditedPdf;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.BlankBacks;
import io.bindprep.repair.LonePlan;
import io.bindprep.repair.MovePlan;
import io.bindprep.repair.MovePlanner;
import io.bindprep.repair.PageRoom;
import io.bindprep.repair.Refusal;
import io.bindprep.repair.RefusalReason;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.ShiftReport.Result;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ShiftRequest;
import io.bindprep.stage.DocumentCheck;
import io.bindprep.stage.PageLook;
import io.bindprep.stage.TimeLimit;
import io.bindprep.wording.PageLists;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The stages of a repair: check, room, moves, a changed copy, its check, and only then the file. */
public final class DocumentRepair {
    private static final double AT_THE_EDGE_MM = 0.01;

    private final ShiftRequest request;
    private final ShiftSettings settings;
    private final CheckRequest check;
    private final Report before;
    private final PageJudge judge;
    private final List<Integer> blanks;
    private final PaintedPages found;

    private DocumentRepair(ShiftRequest request, CheckRequest check, Report before, PaintedPages found) {
        this.request = request;
        this.settings = request.settings();
        this.check = check;
        this.before = before;
        this.found = found;
        this.judge = new PageJudge(before.plan());
        this.blanks = settings.blankVersos() || settings.pad() ? BlankBacks.of(before.block()) : List.of();
    }

    public static ShiftReport run(ShiftRequest request) throws UnreadableInputException, SettingException, IOException {
        CheckRequest check = laid(request);
        PaintedPages found = new PaintedPages();
        PageLook look = request.settings().onlyHit() ? LoneRepair.look(request.settings(), found) : PageLook.NONE;
        return new DocumentRepair(request, check, DocumentCheck.run(check, look), found).run();
    }

    /** A document that prints on fronts only is checked so. */
    static CheckRequest laid(ShiftRequest request) throws SettingException {
        CheckRequest check = request.check();
        Job job = check.job();
        if (request.settings().blankVersos()) {
            job = job.laid(Sides.ONE, job.frontCover(), job.backCover(), job.inserts(), job.special());
        } else if (request.settings().pad() && job.sides() == Sides.ONE) {
            throw new SettingException(
                    "pad",
                    "true",
                    "the job is one-sided, so no leaf has a second side to fill",
                    "leave it out, or use blank-versos to print a one-sided document on a two-sided machine",
                    List.of());
        }
        return new CheckRequest(check.file(), check.name(), job, check.password(), check.progress(), check.helpers())
                .reading(check.read());
    }

    private ShiftReport run() throws UnreadableInputException, SettingException, IOException {
        Planned planned = TimeLimit.run(check.name(), this::plan);
        MovePlan plan = planned.plan();
        if (!plan.refusal().isEmpty()) {
            return refused(null, plan.refusal());
        }
        if (isCopied(planned) && !settings.extendBleed()) {
            return copied(plan, List.of());
        }
        try (Scratch made = Scratch.file()) {
            return changed(planned, made.path());
        }
    }

    private boolean isCopied(Planned planned) {
        return planned.plan().nothing() && planned.alone().moves().isEmpty() && blanks.isEmpty();
    }

    private ShiftReport copied(MovePlan plan, List<String> notes) throws IOException {
        WholeFile.write(request.output(), out -> Files.copy(check.file(), out), check.inputs());
        return new ShiftReport(
                Result.COPIED,
                request.outputName(),
                before,
                before,
                plan.moves(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                notes,
                List.of(),
                Set.of());
    }

    private Planned plan(TimeLimit limit) throws UnreadableInputException, SettingException {
        int last = settings.keep().stream().mapToInt(PageRange::last).max().orElse(0);
        if (last > before.pages().size()) {
            throw new SettingException(
                    "keep",
                    Integer.toString(last),
                    "the document has " + before.pages().size() + " pages",
                    "name pages by their place in the file, from 1",
                    List.of());
        }
        try (OpenedPdf pdf = Intake.known(check.source(), "")) {
            limit.extendFor(pdf.facts().pages().size());
            EditedPdf edited = pdf.edit();
            Refusal forbidden = forbidden(edited, settings, before);
            if (!forbidden.isEmpty()) {
                return Planned.refused(forbidden);
            }
            if (settings.onlyHit()) {
                return alone(edited);
            }
            double nearest = before.pages().stream()
                    .map(PageReport::verdict)
                    .filter(v -> v.verdict() != Verdict.CLEAR && !settings.keeps(v.page()))
                    .map(PageVerdict::nearest)
                    .filter(Objects::nonNull)
                    .mapToDouble(Mark::nearMm)
                    .min()
                    .orElse(judge.clearMm());
            boolean moves = settings.gutter() != null || nearest < judge.clearMm();
            double depth = moves ? MovePlanner.outerDepthMm(settings, judge.clearMm(), nearest) : 0;
            List<PageRoom> rooms = before.pages().stream()
                    .map(page -> OuterEdge.room(pdf, page, depth))
                    .toList();
            MovePlan plan = MovePlanner.plan(
                    settings, judge.clearMm(), before.plan().holeZone().mm(), rooms, before.measures());
            return new Planned(plan, LonePlan.NONE, rooms, edited.encrypted(), edited.signatures(), edited.claims());
        }
    }

    private Planned alone(EditedPdf edited) {
        LonePlan alone = LoneRepair.plan(edited, before, settings, judge.clearMm(), found);
        if (!alone.refusal().isEmpty()) {
            return Planned.refused(alone.refusal());
        }
        List<Move> still = before.pages().stream()
                .map(p -> new Move(p.place().bindingEdge(), 0, 1))
                .toList();
        MovePlan plan = new MovePlan(still, alone.because(), Refusal.NONE);
        return new Planned(plan, alone, List.of(), edited.encrypted(), edited.signatures(), edited.claims());
    }

    /** Reason why a document may not be changed; empty where it may. */
    static Refusal forbidden(EditedPdf pdf, ShiftSettings settings, Report before) {
        Refusal refusal = Refusal.NONE;
        if (!pdf.mayChange()) {
            refusal = refusal.and(Refusal.of(
                    RefusalReason.OWNER,
                    "Its owner does not allow it to be changed: ask for a copy without that restriction, or for"
                            + " the owner's password."));
        }
        if (pdf.signatures() > 0 && !settings.allowSigned()) {
            refusal = refusal.and(Refusal.of(
                    RefusalReason.SIGNED,
                    "It is digitally signed, and a change would void the signature. Have the margin corrected"
                            + " before it is signed, or take an unsigned copy for printing (allow-signed)."));
        }
        if (before.document().lostPages() > 0) {
            refusal = refusal.and(Refusal.of(
                    RefusalReason.LOST_PAGES,
                    "Pages of it are lost, and a repaired copy would hide that. Ask for the file again."));
        }
        return refusal;
    }

    private ShiftReport changed(Planned planned, Path made)
            throws UnreadableInputException, SettingException, IOException {
        MovePlan plan = planned.plan();
        Set<Integer> cut = new TreeSet<>(settings.onlyHit() ? List.of() : runningOff());
        ChangedCopy copy = new ChangedCopy(request, check, before, blanks, planned, found, made);
        ChangedCopy.Made first = copy.make(cut);
        Report after = first.after();
        if (after == null) {
            return refused(null, first.refusal());
        }
        if (isCopied(planned) && copy.bleed().pages().isEmpty()) {
            return copied(plan, List.of(RepairNotes.NO_BLEED_MISSING));
        }
        RepairComparison checked = new RepairComparison(settings, before, after, plan.moves(), blanks, judge);
        // content beyond the edge, which nobody saw, may have come in
        cut.addAll(checked.cameIn());
        if (!cut.isEmpty()) {
            ChangedCopy.Made again = copy.make(cut);
            after = again.after();
            if (after == null) {
                return refused(null, again.refusal());
            }
            checked = new RepairComparison(settings, before, after, plan.moves(), blanks, judge);
        }
        Refusal wrong = checked.wrong();
        Set<Integer> strayed = copy.strayed();
        if (!strayed.isEmpty()) {
            wrong = wrong.and(Refusal.of(
                    RefusalReason.NOT_ALONE, "More than was meant to would move on " + PageLists.named(strayed) + "."));
        }
        if (!wrong.isEmpty()) {
            return refused(after, wrong);
        }
        List<String> notes = new RepairNotes(check, before, checked, planned, copy).of(settings, made, cut);
        WholeFile.write(request.output(), out -> Files.copy(made, out), check.inputs());
        return new ShiftReport(
                Result.CHANGED,
                request.outputName(),
                before,
                after,
                plan.moves(),
                planned.alone().moves(),
                blanks,
                List.copyOf(copy.bleed().pages().keySet()),
                plan.because(),
                notes,
                List.of(),
                Set.of());
    }

    /** Pages where a mark ends at the binding edge, and so goes on beyond it for all one knows. */
    private List<Integer> runningOff() {
        return before.pages().stream()
                .map(PageReport::verdict)
                .filter(v -> !v.background()
                        && v.nearest() != null
                        && Objects.requireNonNull(v.nearest()).nearMm() < AT_THE_EDGE_MM)
                .map(PageVerdict::page)
                .toList();
    }

    private ShiftReport refused(@Nullable Report after, Refusal refusal) {
        return new ShiftReport(
                Result.REFUSED,
                request.outputName(),
                before,
                after,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                refusal.said(),
                refusal.reasons());
    }
}
