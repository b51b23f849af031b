package io.bindprep.stage.repair;

import io.bindprep.binding.Plan;
import io.bindprep.check.Report;
import io.bindprep.files.Scratch;
import io.bindprep.files.WholeFile;
import io.bindprep.job.Job;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.pdf.edit.EditedPdf;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.Refusal;
import io.bindprep.repair.RefusalReason;
import io.bindprep.repair.ShiftReport;
import io.bindprep.repair.SplitReport;
import io.bindprep.repair.VolumePages;
import io.bindprep.report.words.Sentences;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ShiftRequest;
import io.bindprep.stage.DocumentCheck;
import io.bindprep.stage.TimeLimit;
import io.bindprep.volume.Volume;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The volumes that the planner proposes as files, each repaired and checked as one by itself; all are written or none. */
public final class VolumeRepair {
    private final ShiftRequest request;
    private final CheckRequest check;
    private final Report before;
    private final List<Volume> volumes;
    private final List<VolumePages> pages;

    private VolumeRepair(ShiftRequest request, CheckRequest check, Report before) {
        this.request = request;
        this.check = check;
        this.before = before;
        this.volumes = before.split().volumes();
        this.pages = volumes.stream().map(VolumePages::of).toList();
    }

    public static SplitReport run(ShiftRequest request) throws UnreadableInputException, SettingException, IOException {
        CheckRequest check = DocumentRepair.laid(request);
        return new VolumeRepair(request, check, DocumentCheck.run(check)).run();
    }

    private SplitReport run() throws UnreadableInputException, SettingException, IOException {
        if (volumes.isEmpty()) {
            return refused(Refusal.of(RefusalReason.NO_SPLIT, nothingToSplit()));
        }
        for (int n = 1; n <= volumes.size(); n++) {
            WholeFile.check(target(n), request.check().inputs());
        }
        try (Scratch folder = Scratch.folder()) {
            return made(folder.path());
        }
    }

    private String nothingToSplit() {
        Plan plan = before.plan();
        return plan.element() != null
                ? "The book goes on one " + plan.element().name() + " element: there is nothing to split."
                : "No split helps: "
                        + before.split().because().stream().map(Sentences::of).collect(Collectors.joining("; "))
                        + ".";
    }

    private SplitReport made(Path folder) throws UnreadableInputException, SettingException, IOException {
        Refusal forbidden = extracted(folder);
        if (!forbidden.isEmpty()) {
            return refused(forbidden);
        }
        List<SplitReport.WrittenVolume> parts = new ArrayList<>();
        for (int n = 1; n <= volumes.size(); n++) {
            VolumePages own = pages.get(n - 1);
            String name = name(request.outputName(), n);
            Job job = own.job(request.check().job());
            ShiftReport volume = DocumentRepair.run(new ShiftRequest(
                    new CheckRequest(whole(folder, n), name, job, null, check.progress(), check.helpers()),
                    repaired(folder, n),
                    name,
                    request.settings()));
            Refusal wrong = wrong(n, volume);
            if (!wrong.isEmpty()) {
                return refused(wrong);
            }
            parts.add(new SplitReport.WrittenVolume(
                    own.pages(), volumes.get(n - 1).bookmark(), volume));
        }
        for (int n = 1; n <= volumes.size(); n++) {
            Path from = repaired(folder, n);
            WholeFile.write(
                    target(n), out -> Files.copy(from, out), request.check().inputs());
        }
        return new SplitReport(before, parts, notes(), List.of(), Set.of());
    }

    private Refusal wrong(int n, ShiftReport volume) {
        String of = "Volume " + n + ": ";
        if (volume.outcome() == ShiftReport.Result.REFUSED) {
            return new Refusal(volume.reasons(), volume.refusals()).worded(r -> of + r);
        }
        Report after = volume.after();
        int expected = pages.get(n - 1).pages().size() + volume.blanks().size();
        if (after == null || after.plan().element() == null) {
            return Refusal.of(RefusalReason.NO_SPLIT, of + "no element takes it by itself either.");
        }
        return after.pages().size() == expected
                ? Refusal.NONE
                : Refusal.of(
                        RefusalReason.NOT_WHOLE,
                        of + "it has " + after.pages().size() + " pages where " + expected + " belong.");
    }

    /** Each volume's pages as they are, by themselves. */
    private Refusal extracted(Path folder) throws UnreadableInputException, SettingException, IOException {
        return TimeLimit.run(check.name(), limit -> {
            for (int n = 1; n <= volumes.size(); n++) {
                try (OpenedPdf pdf = Intake.open(check.source());
                        OutputStream out = Scratch.write(whole(folder, n))) {
                    limit.extendFor(pdf.facts().pages().size());
                    EditedPdf edited = pdf.edit();
                    Refusal forbidden = DocumentRepair.forbidden(edited, request.settings(), before);
                    if (!forbidden.isEmpty()) {
                        return forbidden;
                    }
                    if (edited.signatures() > 0) {
                        edited.dropSignatures();
                    }
                    List<Integer> own = pages.get(n - 1).pages();
                    edited.only(own);
                    edited.save(out, "pages " + own);
                }
            }
            return Refusal.NONE;
        });
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Each volume keeps the page labels of the whole; bookmarks, structure and links to pages of another volume"
                        + " are left out: the files are for printing.");
        if (volumes.stream().anyMatch(v -> v.block().leaves().stream().anyMatch(l -> l.cover() && l.printed()))) {
            notes.add("The printed covers stand in every volume alike: have the number of the volume put on them.");
        }
        return notes;
    }

    private SplitReport refused(Refusal refusal) {
        return new SplitReport(before, List.of(), List.of(), refusal.said(), refusal.reasons());
    }

    private static Path whole(Path folder, int n) {
        return folder.resolve("whole-" + n + ".pdf");
    }

    private static Path repaired(Path folder, int n) {
        return folder.resolve("repaired-" + n + ".pdf");
    }

    private Path target(int n) {
        Path output = request.output();
        return output.resolveSibling(name(String.valueOf(output.getFileName()), n));
    }

    /** "book.pdf" is "book-1.pdf" for volume 1, "book-01.pdf" where there are ten volumes or more, so that they sort. */
    private String name(String output, int n) {
        int width = Integer.toString(volumes.size()).length();
        String number = "0".repeat(width - Integer.toString(n).length()) + n;
        boolean pdf = output.toLowerCase(Locale.ROOT).endsWith(".pdf");
        String stem = pdf ? output.substring(0, output.length() - 4) : output;
        return stem + "-" + number + (pdf ? output.substring(output.length() - 4) : "");
    }
}
