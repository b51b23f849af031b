package io.bindprep.cli.command;

import io.bindprep.check.Report;
import io.bindprep.cli.batch.Engine;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.console.Terminal;
import io.bindprep.files.WholeFile;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.report.words.VerdictSentence;
import io.bindprep.request.CheckRequest;
import io.bindprep.sheet.SheetFormat;
import io.bindprep.sheet.SheetPaper;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code bind-prep spec}: the job sheet of one document. */
@Command(
        name = "spec",
        addMethodSubcommands = false,
        description =
                "Writes the job sheet of a PDF: what to set, punch, gather and close, with the binding edge at true size.",
        customSynopsis = "bind-prep spec [OPTIONS] FILE -o FILE",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:written, and the document is good",
            "1:written, but the document has findings at or above --fail-on; the sheet says so",
            "2:wrong usage or settings, or the sheet could not be written",
            "3:the file could not be read; nothing is written",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nExample:%n",
        footer = "  bind-prep spec --stock bond-20 --copies 40 book.pdf -o book-sheet.pdf")
public final class SpecCommand implements Callable<Integer> {
    /** Form of the sheet. */
    enum Format {
        pdf,
        html,
        json
    }

    /** Paper of a PDF sheet. */
    enum PaperName {
        a4,
        letter
    }

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description =
                    "pdf, to be printed at full size; html, for a screen at the punch; or json, the report with the run (that"
                            + " of the file's ending, else pdf)")
    private @Nullable Format format;

    @Option(names = "--paper", paramLabel = "PAPER", description = "a4 or letter (a4)")
    private PaperName paper = PaperName.a4;

    @Mixin
    private final OneFile files;

    private final PrintWriter out;
    private final Engine engine;

    public SpecCommand(InputStream in, PrintWriter out, PrintWriter err, Terminal terminal, Engine engine) {
        this.files = new OneFile(in, err, terminal);
        this.out = out;
        this.engine = engine;
    }

    @Override
    public Integer call() {
        String form = files.form(format == null ? null : format.name(), SheetFormat.ids());
        return files.run(check -> written(check, SheetFormat.of(form).orElseThrow()), this::told);
    }

    private Report written(CheckRequest check, SheetFormat form)
            throws UnreadableInputException, SettingException, IOException {
        Report report = engine.check(check);
        Path output = files.output();
        SheetPaper sheet = paper == PaperName.a4 ? SheetPaper.A4 : SheetPaper.LETTER;
        WholeFile.write(output, stream -> form.write(report, sheet, stream), check.inputs());
        return report;
    }

    private int told(Report report) {
        out.println(VerdictSentence.of(report));
        out.println(Problems.written("Job sheet", files.output()));
        return report.failed() ? ExitCode.FINDINGS : ExitCode.GOOD;
    }
}
