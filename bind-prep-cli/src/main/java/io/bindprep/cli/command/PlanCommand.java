package io.bindprep.cli.command;

import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.console.Terminal;
import io.bindprep.cli.job.JobInput;
import io.bindprep.files.WholeFile;
import io.bindprep.problem.SettingException;
import io.bindprep.report.json.JsonReport;
import io.bindprep.report.text.TextReport;
import io.bindprep.request.Pile;
import io.bindprep.request.PlanRequest;
import io.bindprep.setting.Scalars;
import io.bindprep.sheet.SheetFormat;
import io.bindprep.unit.Length;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code bind-prep plan}: how to bind a pile of paper for which there is no document. */
@Command(
        name = "plan",
        addMethodSubcommands = false,
        description =
                "Plans the binding from leaves, size, stocks and covers alone, without a PDF; and writes the job sheet.",
        customSynopsis = "bind-prep plan [OPTIONS] --trim SIZE (--leaves N | --pages N | --stack LENGTH) [-o FILE]",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:planned; no page was checked",
            "1:planned, but with findings at or above --fail-on",
            "2:wrong usage or settings, or the sheet could not be written",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  bind-prep plan --leaves 120 --trim a4 --stock bond-20 -o sheet.pdf",
            "  bind-prep plan --stack \"12 mm\" --trim letter --binding coil",
            "  bind-prep plan --pages 240 --trim a5 --copies 40 --format json"
        })
public final class PlanCommand implements Callable<Integer> {
    /** Form of the answer. */
    enum Format {
        text,
        json
    }

    private static final Length THICKEST = Length.ofMm(2000);

    @Option(names = "--leaves", paramLabel = "N", description = "leaves between the covers, inserts and tabs included")
    private @Nullable Integer leaves;

    @Option(
            names = "--pages",
            paramLabel = "N",
            description = "pages that the document will have, printed covers included; instead of leaves")
    private @Nullable Integer pages;

    @Option(
            names = "--stack",
            paramLabel = "LENGTH",
            description =
                    "measured thickness of the leaves between the covers, such as \"12 mm\"; without --leaves they are"
                            + " counted from it by the stock")
    private @Nullable String stack;

    @Option(names = "--name", paramLabel = "TEXT", description = "how the sheet calls the job (Job)")
    private String name = "Job";

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "also write the job sheet to this file: .html or .json by its ending, else PDF; overwrites an"
                    + " existing file")
    private @Nullable Path output;

    @Mixin
    private final SheetOutput sheet = new SheetOutput();

    @Option(names = "--format", paramLabel = "FORMAT", description = "standard output: text or json (text)")
    private Format format = Format.text;

    @Option(names = "--job", paramLabel = "FILE", description = "job file, YAML or JSON")
    private @Nullable Path jobFile;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this help")
    @SuppressWarnings("unused") // read by picocli
    private boolean help;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private CommandSpec command;

    private final PrintWriter out;
    private final PrintWriter err;
    private final Terminal terminal;

    public PlanCommand(PrintWriter out, PrintWriter err, Terminal terminal) {
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        JobInput input = new JobInput(command, jobFile);
        Path target = output;
        try {
            Length measured = stack == null ? null : Scalars.length("stack", stack, THICKEST, "12 mm", "1/2 in");
            Report report = BindPrep.plan(new PlanRequest(name, input.read(), new Pile(leaves, pages, measured)));
            if (target != null) {
                SheetFormat form = SheetOutput.format(target);
                WholeFile.write(target, stream -> form.write(report, sheet.paper(), stream), input.inputs());
            }
            if (format == Format.json) {
                out.print(JsonReport.write(report, false));
            } else {
                out.print(TextReport.write(report, terminal.style()));
                if (target != null) {
                    out.println("Job sheet written: " + target);
                }
            }
            return report.failed() ? ExitCode.FINDINGS : ExitCode.GOOD;
        } catch (SettingException e) {
            err.println(input.problem(e));
        } catch (IOException e) {
            err.println(Problems.cannotWrite("--output", target == null ? Path.of("") : target, e));
        }
        return ExitCode.USAGE;
    }
}
