package io.bindprep.cli.command;

import io.bindprep.BindPrep;
import io.bindprep.check.Report;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.console.Terminal;
import io.bindprep.cli.job.JobInput;
import io.bindprep.cli.output.FileEnding;
import io.bindprep.day.Day;
import io.bindprep.day.DayJob;
import io.bindprep.day.Rates;
import io.bindprep.files.WholeFile;
import io.bindprep.problem.SettingException;
import io.bindprep.report.json.JsonReport;
import io.bindprep.report.text.TextReport;
import io.bindprep.report.xjdf.XjdfTicket;
import io.bindprep.request.Pile;
import io.bindprep.request.PlanRequest;
import io.bindprep.setting.Scalars;
import io.bindprep.sheet.DaySheet;
import io.bindprep.sheet.SheetFormat;
import io.bindprep.unit.Length;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

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
            "  bind-prep plan --leaves 120 --trim a4 --copies 40 --rates rates.yaml",
            "  bind-prep plan --pages 240 --trim a5 --copies 40 --format json"
        })
public final class PlanCommand implements Callable<Integer> {
    /** Form of the answer. */
    enum Format {
        text,
        json
    }

    private static final String XJDF = "xjdf";
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

    @Option(names = "--name", paramLabel = "TEXT", description = "title of the job on the sheet (Job)")
    private String name = "Job";

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description =
                    "also write the job sheet to this file: .pdf, .html or .json, or a ticket .xjdf, by its ending;"
                            + " overwrites an existing file")
    private @Nullable Path output;

    @Mixin
    private final RatesInput rates = new RatesInput();

    @Mixin
    private final SheetOutput sheet = new SheetOutput();

    @Option(names = "--format", paramLabel = "FORMAT", description = "standard output: text or json (text)")
    private Format format = Format.text;

    @Option(names = "--job", paramLabel = "FILE", description = "job file, YAML or JSON")
    private @Nullable Path jobFile;

    @Mixin
    private final Help help = new Help();

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
        JobInput input = new JobInput(help.command(), jobFile);
        Path target = output;
        String form = target == null ? "" : form(target);
        if (rates.given() && format == Format.json) {
            throw new ParameterException(
                    help.command().commandLine(),
                    "--rates: the JSON of a plan holds no quote; leave --format out, or use bind-prep day with -o day.json");
        }
        try {
            Rates known = rates.read();
            Length measured = stack == null ? null : Scalars.length("stack", stack, THICKEST, "12 mm", "1/2 in");
            Report report = BindPrep.plan(new PlanRequest(name, input.read(), new Pile(leaves, pages, measured)));
            if (target != null) {
                WholeFile.write(target, stream -> write(report, form, stream), rates.plus(input.inputs()));
            }
            if (format == Format.json) {
                out.print(JsonReport.write(report, false));
            } else {
                out.print(TextReport.write(report, terminal.style()));
                if (known != null) {
                    quote(report, known);
                }
                if (target != null) {
                    out.println(Problems.written("Job sheet", target));
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

    private String form(Path target) {
        try {
            return FileEnding.form(target, null, List.of("pdf", "html", "json", XJDF));
        } catch (IllegalArgumentException e) {
            throw new ParameterException(help.command().commandLine(), "--output: " + e.getMessage(), e);
        }
    }

    private void write(Report report, String form, OutputStream stream) throws IOException {
        if (form.equals(XJDF)) {
            stream.write(XjdfTicket.write(report).getBytes(StandardCharsets.UTF_8));
        } else {
            SheetFormat.of(form).orElseThrow().write(report, sheet.paper(), stream);
        }
    }

    /** Time and cost of this job alone; none of a job that must not be punched. */
    private void quote(Report report, Rates known) {
        Day day = BindPrep.day(List.of(new DayJob(name, report)), known);
        if (day.list().isEmpty()) {
            out.println();
            out.println("No time and cost: the job cannot be punched as it is.");
        } else {
            DaySheet.of(day).quoteText().forEach(out::println);
        }
    }
}
