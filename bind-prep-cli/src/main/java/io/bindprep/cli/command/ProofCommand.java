package io.bindprep.cli.command;

import io.bindprep.BindPrep;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Terminal;
import io.bindprep.proof.ProofReport;
import io.bindprep.report.text.ProofText;
import io.bindprep.request.ProofRequest;
import io.bindprep.wording.Terms;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bind-prep proof}: a copy of one file with the holes drawn over it. */
@Command(
        name = "proof",
        addMethodSubcommands = false,
        description = "Writes a copy of a PDF with the holes, the " + Terms.BINDING_MARGIN
                + " and the findings drawn over it.",
        customSynopsis = "bind-prep proof [OPTIONS] FILE -o FILE",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:written, or no page is flagged",
            "1:nothing written, as the file does not allow it",
            "2:wrong usage or settings, or the file could not be written",
            "3:the file could not be read",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nExample:%n",
        footer = "  bind-prep proof --stock bond-20 book.pdf -o book-proof.pdf")
public final class ProofCommand implements Callable<Integer> {
    @Option(names = "--flagged", description = "write only the pages that are not clear")
    private boolean flagged;

    @Mixin
    private final OneFile files;

    private final PrintWriter out;
    private final Terminal terminal;

    public ProofCommand(InputStream in, PrintWriter out, PrintWriter err, Terminal terminal) {
        this.files = new OneFile(in, err, terminal);
        this.out = out;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        files.form(null, List.of("pdf"));
        Path output = files.output();
        return files.run(
                check -> BindPrep.proof(new ProofRequest(check, output, output.toString(), flagged)), this::told);
    }

    private int told(ProofReport proof) {
        out.print(ProofText.write(proof, terminal.style()));
        return proof.outcome() == ProofReport.Result.REFUSED ? ExitCode.FINDINGS : ExitCode.GOOD;
    }
}
