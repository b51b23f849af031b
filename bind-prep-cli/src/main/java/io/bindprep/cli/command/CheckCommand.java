package io.bindprep.cli.command;

import io.bindprep.check.Report;
import io.bindprep.cli.batch.BatchCheck;
import io.bindprep.cli.batch.Engine;
import io.bindprep.cli.batch.FileCheck;
import io.bindprep.cli.batch.Summary;
import io.bindprep.cli.console.Choice;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.console.Terminal;
import io.bindprep.cli.input.ImageReaders;
import io.bindprep.cli.input.InputFile;
import io.bindprep.cli.input.InputFiles;
import io.bindprep.cli.job.JobInput;
import io.bindprep.cli.job.NamedFiles;
import io.bindprep.cli.output.OutputOptions;
import io.bindprep.cli.output.ReportOutput;
import io.bindprep.cli.output.WrittenReports;
import io.bindprep.cli.watch.WatchOptions;
import io.bindprep.cli.watch.WatchSession;
import io.bindprep.files.Inputs;
import io.bindprep.job.Job;
import io.bindprep.job.JobOrigin;
import io.bindprep.job.JobReader;
import io.bindprep.problem.SettingException;
import io.bindprep.report.text.JobExplanation;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;

/** {@code bind-prep check}: each file against one job, the worst answer as exit code. */
public final class CheckCommand implements Callable<Integer> {
    private final PositionalParamSpec named = PositionalParamSpec.builder()
            .paramLabel("FILE")
            .arity("0..*")
            .type(List.class)
            .auxiliaryTypes(Path.class)
            .description("PDF files, or folders with PDF files; - for standard input")
            .build();

    private final OptionSpec jobFile = Choice.of(Path.class, "--job", "FILE", "job file, YAML or JSON");

    private final OptionSpec passwordFile =
            Choice.of(Path.class, "--password-file", "FILE", "file whose first line is the password of encrypted PDFs");

    private final OptionSpec readers =
            Choice.of(Path.class, ImageReaders.OPTION, ImageReaders.LABEL, ImageReaders.MEANING);

    private final OptionSpec explainJob = Choice.flag(
            "--explain-job",
            "check nothing; list every key of the job with its value and its origin: option, line of the job file, or"
                    + " built in");

    private final OutputOptions answers = new OutputOptions();
    private final AcceptOptions accept = new AcceptOptions();
    private final SinceOptions since = new SinceOptions();
    private final BatchOptions batch = new BatchOptions();
    private final WatchOptions watch = new WatchOptions();
    private final CommandSpec spec = CommandSpec.wrapWithoutInspection(this);

    private final InputStream in;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Terminal terminal;
    private final Engine engine;

    public CheckCommand(InputStream in, PrintWriter out, PrintWriter err, Terminal terminal, Engine engine) {
        this.in = in;
        this.out = out;
        this.err = err;
        this.terminal = terminal;
        this.engine = engine;
    }

    /** The command as picocli runs it. */
    public CommandSpec spec() {
        spec.usageMessage()
                .description("Checks PDFs: tells whether to print each, and how to bind it.")
                .customSynopsis("bind-prep check [OPTIONS] FILE...", "       bind-prep check [OPTIONS] --watch DIR")
                .sortOptions(false)
                .exitCodeListHeading("%nExit codes, of several files the highest:%n")
                .exitCodeList(UsageMessageSpec.keyValuesMap(
                        "0:good",
                        "1:findings at or above --fail-on",
                        "2:wrong usage or settings",
                        "3:a file could not be read",
                        "4:internal error, a bug in bind-prep"))
                .footerHeading("%nExamples:%n")
                .footer(
                        "  bind-prep check --stock bond-20 --sides two --pitch 3:1 book.pdf",
                        "  bind-prep check --job job.yaml --write reports/ book.pdf",
                        "  bind-prep check --format jsonl incoming/ > incoming.jsonl",
                        "  pdf-maker | bind-prep check -",
                        "  bind-prep check --watch incoming/ --out reports/ --reports html,json");
        return spec.name("check")
                .addPositional(named)
                .addOption(jobFile)
                .addOption(passwordFile)
                .addOption(readers)
                .addOption(explainJob)
                .addOption(Help.option())
                .addArgGroup(answers.group(10))
                .addArgGroup(accept.group(15))
                .addArgGroup(since.group(17))
                .addArgGroup(batch.group(20))
                .addArgGroup(watch.group(30));
    }

    @Override
    public Integer call() {
        int threads = batch.threads(spec);
        checkUsage();
        ImageReaders.register(spec, readers.getValue());
        JobInput input = new JobInput(spec, jobFile.getValue());
        boolean explained = Choice.given(explainJob);
        Job job;
        try {
            if (explained) {
                explain(input);
            }
            job = input.read();
        } catch (SettingException e) {
            err.println(input.problem(e));
            return ExitCode.USAGE;
        }
        if (explained) {
            return ExitCode.GOOD;
        }
        Path locked = passwordFile.getValue();
        String password = locked == null ? null : NamedFiles.password(spec, locked);
        try {
            return watch.asked() ? watch(job, password, input, threads) : check(job, password, input, threads);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
        }
    }

    // before the job is judged: what is wrong with it is told after where it comes from
    private void explain(JobInput input) throws SettingException {
        List<JobOrigin> rows = JobReader.origins(input.settings());
        boolean text = answers.format() == OutputOptions.Format.text;
        out.print(text ? JobExplanation.text(rows, "--") : JobExplanation.json(rows));
        out.flush();
    }

    private void checkUsage() {
        List<Path> files = files();
        accept.check(spec, !watch.asked() && files.size() == 1);
        since.check(spec, watch.asked(), files.size());
        if (!watch.asked()) {
            watch.checkUnused(spec);
            if (files.isEmpty() && !Choice.given(explainJob)) {
                throw new ParameterException(
                        spec.commandLine(), "say which FILE to check, for instance: bind-prep check book.pdf");
            }
        } else if (!files.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "--watch goes without FILE: what comes into its folder is checked");
        } else if (!answers.writes().isEmpty() || answers.format() == OutputOptions.Format.json) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--watch goes without --write and with --format text or jsonl; say --reports and --out");
        }
    }

    private int watch(Job job, @Nullable String password, JobInput input, int threads) {
        ReportOutput form = answers.open(out, terminal, true);
        Semaphore pageThreads = batch.pageThreads(spec, true);
        return new WatchSession(out, err, answers)
                .run(
                        watch.settings(spec),
                        reports -> new FileCheck(engine, job, password, input, form, reports, pageThreads),
                        threads,
                        input.wording(),
                        passwordFile.getValue(),
                        read(input));
    }

    private List<Path> files() {
        return Choice.all(named);
    }

    private Inputs read(JobInput input) {
        Inputs read = input.inputs();
        Path locked = passwordFile.getValue();
        return locked == null ? read : read.plus("the password file", locked);
    }

    private int check(Job job, @Nullable String password, JobInput input, int threads) {
        try (InputFiles inputs = InputFiles.of(files(), in)) {
            List<InputFile> files = inputs.files();
            Inputs read = read(input).plus(since.inputs(files));
            WrittenReports written = written(files, read);
            Engine comparing = since.over(plain() ? r -> engine.check(r.withoutDigest()) : engine, files);
            Summary summary = new Summary();
            int exit;
            try (ReportOutput output = answers.open(out, terminal, inputs.several())) {
                Semaphore pageThreads = batch.pageThreads(spec, inputs.several());
                AtomicReference<@Nullable Report> seen = new AtomicReference<>();
                Engine told = request -> {
                    Report report = comparing.check(request);
                    seen.set(report);
                    return report;
                };
                FileCheck check = new FileCheck(
                        accept.asked() ? told : comparing, job, password, input, output, written, pageThreads);
                BatchCheck run = new BatchCheck(out, err, terminal.showsProgress(), check, output);
                exit = inputs.several() ? run.many(files, threads, summary) : run.one(files.get(0));
                Report report = seen.get();
                if (report != null && !inputs.several()) {
                    exit = Math.max(
                            exit,
                            accept.write(
                                    report, read.plus("the PDF", files.get(0).file()), err));
                }
            }
            String unwritten = written.told(written.finish());
            err.print(unwritten);
            exit = unwritten.isEmpty() ? exit : Math.max(exit, ExitCode.USAGE);
            if (inputs.several()) {
                err.print(summary.text(files.size()));
            }
            return exit;
        } catch (SettingException e) {
            err.println(Problems.setting(e, null));
            return ExitCode.USAGE;
        }
    }

    // nothing is told but the text on the screen, which shows no digest
    private boolean plain() {
        return answers.format() == OutputOptions.Format.text && answers.writes().isEmpty() && !since.asked();
    }

    private WrittenReports written(List<InputFile> files, Inputs read) {
        try {
            return WrittenReports.of(answers.writes(), files, read);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--write " + e.getMessage(), e);
        }
    }
}
