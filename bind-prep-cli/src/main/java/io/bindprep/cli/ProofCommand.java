package io.bindprep.cli;

import io.bindprep.BindPrep;
import io.bindprep.CheckRequest;
import io.bindprep.ProofRequest;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.proof.ProofReport;
import io.bindprep.report.ProofText;
import io.bindprep.report.TextReport;
import io.bindprep.report.TextStyle;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code bind-prep proof}: a copy of one file with the holes drawn over it. */
@Command(
        name = "proof",
        description = "Writes a copy of a PDF with the holes, the clear margin and what was found drawn over it.",
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
final class ProofCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "the PDF file; it stays as it is")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private Path file;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            required = true,
            description = "the file to write; one that is there is replaced")
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private Path output;

    @Option(names = "--flagged", description = "write only the pages that are not clear")
    private boolean flagged;

    @Option(names = "--job", paramLabel = "FILE", description = "job file, YAML or JSON")
    private @Nullable Path jobFile;

    @Option(
            names = "--password-file",
            paramLabel = "FILE",
            description = "file whose first line is the password of an encrypted PDF; what is written is not encrypted")
    private @Nullable Path passwordFile;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this help")
    @SuppressWarnings("unused") // read by picocli
    private boolean help;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private CommandSpec spec;

    private final PrintWriter out;
    private final PrintWriter err;
    private final Terminal terminal;

    ProofCommand(PrintWriter out, PrintWriter err, Terminal terminal) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        JobSettings settings = JobOptions.settings(spec.commandLine().getParseResult());
        String name = file.toString();
        try {
            if (jobFile != null) {
                settings = settings.over(JobSettings.read(NamedFiles.text(spec, "--job", jobFile), jobFile.toString()));
            }
            ProofReport proof = proof(name, JobReader.toJob(settings));
            out.print(ProofText.write(proof, terminal.style()));
            return proof.outcome() == ProofReport.Outcome.REFUSED ? ExitCode.FINDINGS : ExitCode.GOOD;
        } catch (UnreadableInputException e) {
            err.print(TextReport.unreadable(
                    name, e, new TextStyle(false, terminal.style().width())));
            return ExitCode.UNREADABLE;
        } catch (SettingException e) {
            err.println(Problems.setting(e, settings.place(e.key()).orElse(null)));
            return ExitCode.USAGE;
        } catch (IOException e) {
            err.println(Problems.cannotWrite("--output", output, e));
            return ExitCode.USAGE;
        }
    }

    private ProofReport proof(String name, Job job) throws UnreadableInputException, SettingException, IOException {
        String password = passwordFile == null ? null : NamedFiles.password(spec, passwordFile);
        try (ProgressLine progress = new ProgressLine(err, terminal.showsProgress(), System::nanoTime)) {
            CheckRequest check = new CheckRequest(file, name, job, password, progress);
            return BindPrep.proof(new ProofRequest(check, output, output.toString(), flagged));
        }
    }
}
