package io.bindprep.stage.proof;

import io.bindprep.check.PageReport;
import io.bindprep.check.Report;
import io.bindprep.files.Scratch;
import io.bindprep.files.WholeFile;
import io.bindprep.marks.Verdict;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.pdf.edit.CopyCheck;
import io.bindprep.pdf.edit.EditedPdf;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.proof.ProofMaker;
import io.bindprep.proof.ProofPage;
import io.bindprep.proof.ProofReport;
import io.bindprep.proof.ProofReport.Result;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ProofRequest;
import io.bindprep.stage.TimeLimit;
import io.bindprep.wording.PageLists;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The stages of a proof: check, what is drawn over each page, a changed copy, and only then the file. */
public final class ProofDrawing {
    private static final int MOST_RANGES = 8;

    private final ProofRequest request;
    private final CheckRequest check;
    private final Report report;
    private final List<Integer> pages;
    private final List<String> notes = new ArrayList<>();
    private final List<String> refusals = new ArrayList<>();
    private final List<Integer> reach = new ArrayList<>();
    private int comments;

    public ProofDrawing(ProofRequest request, Report report) {
        this.request = request;
        this.check = request.check();
        this.report = report;
        this.pages = report.pages().stream()
                .filter(p -> !request.flaggedOnly() || p.verdict().verdict() != Verdict.CLEAR)
                .map(PageReport::facts)
                .map(f -> f.page())
                .toList();
    }

    public ProofReport run() throws UnreadableInputException, SettingException, IOException {
        if (pages.isEmpty()) {
            return result(Result.NOTHING_FLAGGED);
        }
        try (Scratch scratch = Scratch.file()) {
            Path made = scratch.path();
            TimeLimit.run(check.name(), limit -> {
                try (OutputStream out = Scratch.write(made)) {
                    draw(limit, out);
                }
                if (refusals.isEmpty()) {
                    CopyCheck.fault(made, reach).ifPresent(refusals::add);
                }
                return made;
            });
            if (!refusals.isEmpty()) {
                return result(Result.REFUSED);
            }
            WholeFile.write(request.output(), out -> Files.copy(made, out), check.inputs());
            return result(Result.WRITTEN);
        }
    }

    private ProofReport result(Result outcome) {
        List<Integer> written = outcome == Result.WRITTEN ? pages : List.of();
        return new ProofReport(outcome, request.outputName(), report, written, comments, notes, refusals);
    }

    private void draw(TimeLimit limit, OutputStream out) throws UnreadableInputException, IOException {
        try (OpenedPdf pdf = Intake.open(check.source())) {
            if (!pdf.identified().sha256().equals(report.document().sha256())) {
                throw new IllegalStateException("the file changed since it was checked");
            }
            limit.extendFor(pdf.facts().pages().size());
            EditedPdf edited = pdf.edit();
            if (!edited.mayChange()) {
                refusals.add(
                        "Its owner does not allow it to be changed, so nothing may be drawn over it: ask for a copy"
                                + " without that restriction, or for the owner's password.");
                return;
            }
            if (edited.encrypted()) {
                notes.add("The file was encrypted; the proof is not. Keep it as safe as the content asks.");
            }
            if (edited.signatures() > 0) {
                edited.dropSignatures();
                notes.add(
                        "The file is digitally signed. The proof is another file, so the signatures are taken out of it;"
                                + " the file that was signed is unchanged.");
            }
            List<String> claims = edited.claims();
            if (!claims.isEmpty()) {
                edited.dropClaims();
                notes.add("The file claims " + String.join(" and ", claims)
                        + ". Layers and comments may break that, so the proof makes no such claim; its output intents are"
                        + " kept. The file itself is unchanged.");
            }
            List<Integer> bare = new ArrayList<>();
            Set<Integer> wanted = new HashSet<>(pages);
            List<ProofPage> drawn = ProofMaker.of(report);
            for (ProofPage page : drawn) {
                if (wanted.contains(page.page())) {
                    reach.add(edited.reach(page.page()));
                    comments += page.comments().size();
                    if (!edited.proof(page)) {
                        bare.add(page.page());
                    }
                }
            }
            if (!bare.isEmpty()) {
                notes.add("No holes are drawn on page" + (bare.size() == 1 ? " " : "s ")
                        + PageLists.compact(bare, MOST_RANGES)
                        + ": the content breaks off or leaves nothing that can be drawn over.");
            }
            if (request.flaggedOnly()) {
                edited.only(pages);
            }
            edited.save(out, "proof of " + pages + " " + drawn.get(0).strip());
        }
    }
}
