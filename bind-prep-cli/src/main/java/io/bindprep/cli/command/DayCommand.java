package io.bindprep.cli.command;

import io.bindprep.BindPrep;
import io.bindprep.cli.batch.Engine;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.day.DayEntry;
import io.bindprep.cli.day.DayFiles;
import io.bindprep.cli.input.ImageReaders;
import io.bindprep.cli.job.NamedFiles;
import io.bindprep.cli.output.FileEnding;
import io.bindprep.day.Day;
import io.bindprep.day.DayJob;
import io.bindprep.day.Rates;
import io.bindprep.files.Inputs;
import io.bindprep.files.WholeFile;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.sheet.DaySheet;
import io.bindprep.sheet.SheetFormat;
import io.bindprep.wording.Printable;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** {@code bind-prep day}: several jobs in the order that changes least, with one list of supplies. */
@Command(
        name = "day",
        addMethodSubcommands = false,
        description =
                "Puts a day's jobs in the order with the fewest changes at the punch. Lists the supplies once for all.",
        customSynopsis = "bind-prep day [OPTIONS] FILE... [-o FILE]",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:every job is on the list",
            "1:a job has findings that fail it; it is held back and the list says so",
            "2:wrong usage or settings, or the list could not be written",
            "3:a PDF could not be read; nothing is written",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nA day file:%n",
        footer = {
            "  jobs:",
            "    - pdf: handbook.pdf",
            "      job: handbook.yaml",
            "    - name: Notebooks",
            "      leaves: 120",
            "      trim: a5",
            "      copies: 40",
            "Each job takes pdf (and password-file where it is encrypted), or leaves, pages or stack; name; job, a job"
                    + " file; and every key of a job. Files count from the day file's folder.",
            "",
            "Examples:",
            "  bind-prep day tuesday.yaml -o tuesday.pdf",
            "  bind-prep day handbook.pdf cookbook.pdf notebooks.yaml --rates rates.yaml -o day.html"
        })
public final class DayCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "FILE",
            arity = "1..*",
            description =
                    "a day file; a job file that also says pdf, leaves, pages or stack; or a PDF, with the job file"
                            + " of the same name beside it")
    private List<Path> files = List.of();

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description =
                    "also write the list to this file, each job's sheet behind it: .pdf, .html or .json by its ending;"
                            + " overwrites an existing file")
    private @Nullable Path output;

    @Mixin
    private final RatesInput rates = new RatesInput();

    @Option(
            names = "--password-file",
            paramLabel = "FILE",
            description = "file whose first line is the password of encrypted PDFs")
    private @Nullable Path passwordFile;

    @Option(names = ImageReaders.OPTION, paramLabel = ImageReaders.LABEL, description = ImageReaders.MEANING)
    private @Nullable Path readers;

    @Mixin
    private final SheetOutput sheet = new SheetOutput();

    @Mixin
    private final Help help = new Help();

    private final PrintWriter out;
    private final PrintWriter err;
    private final Engine engine;

    public DayCommand(PrintWriter out, PrintWriter err, Engine engine) {
        this.out = out;
        this.err = err;
        this.engine = engine;
    }

    @Override
    public Integer call() {
        ImageReaders.register(help.command(), readers);
        Path target = output;
        SheetFormat form = target == null ? SheetFormat.PDF : form(target);
        DayFiles read = new DayFiles(passwordFile == null ? null : NamedFiles.password(help.command(), passwordFile));
        String at = "";
        try {
            Rates known = rates.read();
            List<DayEntry> entries = new ArrayList<>();
            for (Path file : files) {
                at = file + ": ";
                entries.addAll(read.entries(file));
            }
            DayFiles.checkCount(entries);
            List<DayJob> jobs = new ArrayList<>();
            for (DayEntry entry : entries) {
                at = entry.name() + ": ";
                jobs.add(new DayJob(entry.name(), entry.report(engine::check)));
            }
            return told(BindPrep.day(jobs, known), form, read.all());
        } catch (SettingException e) {
            err.println(Problems.setting(e, at + "settings"));
            return ExitCode.USAGE;
        } catch (UnreadableInputException e) {
            err.println("bind-prep: " + Printable.of(at) + Printable.page(e.getMessage() + "\n  " + e.remedy()));
            return ExitCode.UNREADABLE;
        } catch (IOException e) {
            // the day file itself is named once
            String of = at.equals(read.last() + ": ") ? "" : Printable.of(at);
            err.println("bind-prep: " + of + Problems.cannotRead(Path.of(read.last()), e));
            return ExitCode.USAGE;
        }
    }

    private SheetFormat form(Path target) {
        try {
            return SheetFormat.of(FileEnding.form(target, null, SheetFormat.ids()))
                    .orElseThrow();
        } catch (IllegalArgumentException e) {
            throw new ParameterException(help.command().commandLine(), "--output: " + e.getMessage(), e);
        }
    }

    private int told(Day day, SheetFormat form, List<Path> inputs) {
        Path target = output;
        if (target != null) {
            Inputs kept = rates.plus(Inputs.NONE);
            for (Path file : inputs) {
                kept = kept.plus("a file of the day", file);
            }
            Inputs all = passwordFile == null ? kept : kept.plus("the password file", passwordFile);
            try {
                WholeFile.write(target, stream -> form.write(day, sheet.paper(), stream), all);
            } catch (IOException e) {
                err.println(Problems.cannotWrite("--output", target, e));
                return ExitCode.USAGE;
            }
        }
        DaySheet.of(day).text().forEach(out::println);
        if (target != null) {
            out.println(Problems.written("List and job sheets", target));
        }
        return day.heldBack().isEmpty() ? ExitCode.GOOD : ExitCode.FINDINGS;
    }
}
