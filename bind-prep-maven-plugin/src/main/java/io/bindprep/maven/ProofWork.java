package io.bindprep.maven;

import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.proof.ProofReport;
import io.bindprep.request.CheckRequest;
import io.bindprep.request.ProofRequest;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The proof; findings fail no build, a document that nothing may be drawn over does. */
final class ProofWork implements Work {
    static final String ENDING = ".proof.pdf";

    private final OutputFolder folder;
    private final boolean flagged;
    private final Engine engine;

    ProofWork(OutputFolder folder, boolean flagged, Engine engine) {
        this.folder = folder;
        this.flagged = flagged;
        this.engine = engine;
    }

    @Override
    public String settings() {
        return flagged ? "proof of flagged pages" : "proof";
    }

    @Override
    public Made make(PdfInput document, CheckRequest request)
            throws UnreadableInputException, SettingException, IOException {
        Path file = folder.file(document, ENDING);
        Report report = engine.check(request);
        ProofReport proof = BindPrep.proof(new ProofRequest(request, file, folder.shown(file), flagged), report);
        boolean written = proof.outcome() == ProofReport.Result.WRITTEN;
        if (!written) {
            folder.remove(document, ENDING);
        }
        return new Made(
                level(proof),
                Wording.proved(document, proof),
                proof.report().document().sha256(),
                written ? List.of(file) : List.of());
    }

    private static Made.Level level(ProofReport proof) {
        if (proof.outcome() == ProofReport.Result.REFUSED) {
            return Made.Level.BAD;
        }
        return proof.notes().isEmpty() ? Made.Level.GOOD : Made.Level.CARE;
    }

    @Override
    public void unreadable(PdfInput document, UnreadableInputException why) throws IOException {
        folder.remove(document, ENDING);
    }
}
