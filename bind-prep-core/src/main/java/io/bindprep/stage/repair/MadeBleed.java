package io.bindprep.stage.repair;

import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.files.PdfSource;
import io.bindprep.files.Scratch;
import io.bindprep.marks.PageBasics;
import io.bindprep.page.BleedStrip;
import io.bindprep.page.PageEdge;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.pdf.edit.EditedPdf;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.repair.BleedPlan;
import io.bindprep.repair.BleedPlan.BleedFault;
import io.bindprep.repair.MovePlanner;
import io.bindprep.repair.Refusal;
import io.bindprep.repair.RefusalReason;
import io.bindprep.repair.ShiftSettings;
import io.bindprep.stage.TimeLimit;
import io.bindprep.wording.PageLists;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Bleed made at the binding edge of the pages of a working copy, where art ends there too soon. */
final class MadeBleed {
    private static final int MOST_RANGES = 8;

    private final Report before;
    private final ShiftSettings settings;
    private final double wantMm;
    private final IntUnaryOperator numberAfter;
    private final Map<Integer, List<BleedStrip>> pages = new TreeMap<>();
    private final Map<BleedFault, Set<Integer>> faults = new EnumMap<>(BleedFault.class);

    /**
     * Nothing made yet.
     *
     * @param numberAfter of a page in the copy
     */
    MadeBleed(Report before, ShiftSettings settings, IntUnaryOperator numberAfter) {
        this.before = before;
        this.settings = settings;
        this.wantMm = before.job().printLimits().bleed().mm();
        this.numberAfter = numberAfter;
    }

    /** Pages of the input on which bleed was made, with what it was made of. */
    Map<Integer, List<BleedStrip>> pages() {
        return pages;
    }

    /** Distance that it goes beyond the trim. */
    double wantMm() {
        return wantMm;
    }

    /** Makes it in a working copy; what cannot be made is refused and the copy is of no use. */
    Refusal make(Path copy, TimeLimit limit) throws UnreadableInputException, IOException {
        pages.clear();
        faults.clear();
        try (Scratch scratch = Scratch.file()) {
            boolean any;
            try (OpenedPdf pdf =
                    Intake.open(new PdfSource(copy, before.document().file(), null))) {
                limit.extendFor(2 * pdf.facts().pages().size());
                EditedPdf edited = pdf.edit();
                before.pages().stream().filter(this::mayLack).forEach(page -> extend(edited, page));
                any = faults.isEmpty() && !pages.isEmpty();
                if (any) {
                    try (OutputStream out = Scratch.write(scratch.path())) {
                        edited.save(out, "bleed " + pages);
                    }
                }
            }
            if (any) {
                Files.copy(scratch.path(), copy, StandardCopyOption.REPLACE_EXISTING);
            }
        }
        return refusal();
    }

    private boolean mayLack(PageReport page) {
        PageBasics.Bleed least = page.verdict().basics().bleed();
        return !settings.keeps(page.facts().page()) && least != null && least.mm() < wantMm;
    }

    private void extend(EditedPdf pdf, PageReport page) {
        int number = page.facts().page();
        int after = numberAfter.applyAsInt(number);
        PageEdge edge = page.place().bindingEdge();
        BleedPlan plan = BleedPlan.of(pdf.painted(after, edge), wantMm);
        if (plan.fault() != null) {
            fault(plan.fault(), number);
        } else if (!plan.strips().isEmpty()) {
            if (pdf.extendBleed(after, edge, wantMm, plan.strips())) {
                pages.put(number, plan.strips());
            } else {
                fault(BleedFault.UNREADABLE, number);
            }
        }
    }

    private void fault(@Nullable BleedFault fault, int page) {
        if (fault != null) {
            faults.computeIfAbsent(fault, k -> new TreeSet<>()).add(page);
        }
    }

    private Refusal refusal() {
        List<String> said = new ArrayList<>();
        Set<Integer> blocking = new TreeSet<>();
        faults.forEach((fault, on) -> {
            said.add("No bleed can be made at the binding edge of " + PageLists.named(on, MOST_RANGES) + ": "
                    + fault.why() + ". Ask for an export with bleed.");
            blocking.addAll(on);
        });
        if (said.isEmpty()) {
            return Refusal.NONE;
        }
        Refusal refusal = Refusal.of(RefusalReason.NO_BLEED, said);
        return MovePlanner.leaving(settings, blocking, before.pages().size())
                .map(refusal::wayOut)
                .orElse(refusal);
    }

    /** Pages whose bleed is still too short at the binding edge of the copy. */
    Set<Integer> lacking(Path copy, TimeLimit limit) throws UnreadableInputException {
        Set<Integer> lacking = new TreeSet<>();
        try (OpenedPdf pdf = Intake.known(new PdfSource(copy, before.document().file(), null), "")) {
            limit.extendFor(pdf.facts().pages().size());
            EditedPdf edited = pdf.edit();
            for (int page : pages.keySet()) {
                PageEdge edge = before.pages().get(page - 1).place().bindingEdge();
                BleedPlan left = BleedPlan.of(edited.painted(numberAfter.applyAsInt(page), edge), wantMm);
                if (left.fault() != null || !left.strips().isEmpty()) {
                    lacking.add(page);
                }
            }
        }
        return lacking;
    }
}
