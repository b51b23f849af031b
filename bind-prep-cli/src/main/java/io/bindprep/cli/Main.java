package io.bindprep.cli;

import io.bindprep.BindPrep;
import io.bindprep.cli.batch.Engine;
import io.bindprep.cli.command.BindPrepCommand;
import io.bindprep.cli.command.CalibrateCommand;
import io.bindprep.cli.command.CheckCommand;
import io.bindprep.cli.command.CompletionCommand;
import io.bindprep.cli.command.DayCommand;
import io.bindprep.cli.command.InitCommand;
import io.bindprep.cli.command.ListCommand;
import io.bindprep.cli.command.PlanCommand;
import io.bindprep.cli.command.ProofCommand;
import io.bindprep.cli.command.ShiftCommand;
import io.bindprep.cli.command.SpecCommand;
import io.bindprep.cli.command.TestsheetCommand;
import io.bindprep.cli.console.CommandGroups;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.NoLogging;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.console.Suggestion;
import io.bindprep.cli.console.Terminal;
import io.bindprep.cli.console.UsageText;
import io.bindprep.cli.job.JobOptions;
import io.bindprep.problem.SharedMemory;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The process around the command: streams, exit code, and the promise that nobody ever sees a stack trace. */
public final class Main {
    private static final byte[] OUT_OF_MEMORY =
            ("bind-prep: " + Problems.OUT_OF_MEMORY + "\n").getBytes(StandardCharsets.US_ASCII);

    /** In less memory what fails for want of it must fail where that is told. */
    private static final long ROOM_TO_PREPARE = 64L * 1024 * 1024;

    private static final String NAME = "bind-prep";

    private final InputStream in;
    private final PrintWriter out;
    private final PrintWriter err;
    private final Terminal terminal;
    private final Engine engine;

    Main(InputStream in, PrintWriter out, PrintWriter err, Terminal terminal, Engine engine) {
        this.in = in;
        this.out = out;
        this.err = err;
        this.terminal = terminal;
        this.engine = engine;
    }

    /** Runs the command and ends the process with its exit code. */
    public static void main(String[] args) {
        // set before logging is, and only if it ever is, configured: configuring it takes time
        System.setProperty("java.util.logging.config.class", NoLogging.class.getName());
        int exit;
        try {
            if (args.length > 1) {
                prepare();
            }
            Main main = new Main(System.in, utf8(System.out), utf8(System.err), Terminal.ofProcess(), BindPrep::check);
            exit = main.run(args);
        } catch (Error e) {
            if (!SharedMemory.ranShort(e)) {
                throw e;
            }
            // text made beforehand: there may be no memory for more
            System.err.write(OUT_OF_MEMORY, 0, OUT_OF_MEMORY.length);
            System.err.flush();
            exit = ExitCode.INTERNAL;
        }
        System.exit(exit);
    }

    /** Has what a check needs loaded while its options are read, where there is a processor and memory to spare. */
    private static void prepare() {
        Runtime machine = Runtime.getRuntime();
        if (machine.availableProcessors() < 2 || machine.maxMemory() < ROOM_TO_PREPARE) {
            return;
        }
        Thread thread = new Thread(
                () -> {
                    try {
                        BindPrep.prepare();
                    } catch (RuntimeException | Error e) {
                        return; // the check meets the same and tells it
                    }
                },
                "bind-prep prepare");
        thread.setDaemon(true);
        thread.start();
    }

    /** Runs the command; returns its exit code. */
    int run(String... args) {
        Verb one = args.length == 0 ? null : verbs().get(args[0]);
        String[] told = one == null ? help(args) : Arrays.copyOfRange(args, 1, args.length);
        CommandLine line = one == null ? whole() : one.alone(args[0], List.of(told));
        // a file may be called @book.pdf
        line.setExpandAtFiles(false)
                .setOut(out)
                .setErr(err)
                .setParameterExceptionHandler(new Failures(err))
                .setExecutionExceptionHandler(new Failures(err));
        try {
            return written(line.execute(told));
        } catch (StackOverflowError e) {
            return Failures.internal(err, e);
        } finally {
            out.flush();
            err.flush();
        }
    }

    /**
     * A word of the command.
     *
     * @param command annotated, or its spec
     * @param job true where each key of a job is an option
     */
    private record Verb(Supplier<Object> command, boolean job) {
        /** The verb without the command around it and without options nobody asks for: a small check starts sooner. */
        CommandLine alone(String name, List<String> args) {
            CommandLine line = new CommandLine(command.get()).setCommandName(NAME + " " + name);
            if (job) {
                JobOptions.addTo(line.getCommandSpec(), args);
            }
            return line;
        }

        CommandLine whole() {
            CommandLine line = new CommandLine(command.get());
            if (job) {
                JobOptions.addTo(line.getCommandSpec());
            }
            return line;
        }
    }

    /** "help check" is "check --help"; "help" alone is "--help"; of what is no command the command line is told. */
    private String[] help(String[] args) {
        if (args.length == 0 || !args[0].equals("help")) {
            return args;
        }
        boolean known = args.length > 1 && verbs().containsKey(args[1]);
        return args.length == 1
                ? new String[] {"--help"}
                : known ? new String[] {args[1], "--help"} : new String[] {args[1]};
    }

    /** An answer that was lost, on a full disk or a closed pipe, is no success. */
    private int written(int exit) {
        if (!out.checkError()) {
            return exit;
        }
        err.println("bind-prep: standard output cannot be written: it was closed, or its disk is full");
        return Math.max(exit, ExitCode.USAGE);
    }

    private Map<String, Verb> verbs() {
        Map<String, Verb> verbs = new LinkedHashMap<>();
        verbs.put("check", new Verb(() -> new CheckCommand(in, out, err, terminal, engine).spec(), true));
        verbs.put("shift", new Verb(() -> new ShiftCommand(in, out, err, terminal), true));
        verbs.put("proof", new Verb(() -> new ProofCommand(in, out, err, terminal), true));
        verbs.put("spec", new Verb(() -> new SpecCommand(in, out, err, terminal, engine), true));
        verbs.put("plan", new Verb(() -> new PlanCommand(out, err, terminal), true));
        verbs.put("day", new Verb(() -> new DayCommand(out, err, engine), false));
        verbs.put("testsheet", new Verb(() -> new TestsheetCommand(out, err), true));
        verbs.put("calibrate", new Verb(() -> new CalibrateCommand(out, err), true));
        verbs.put("list", new Verb(() -> new ListCommand(out, err, terminal), false));
        verbs.put("init", new Verb(() -> new InitCommand(out), false));
        verbs.put("completion", new Verb(() -> new CompletionCommand(out, this::whole), false));
        return verbs;
    }

    /** The command with all its verbs, to be described, not run. */
    public static CommandLine whole(InputStream in, PrintWriter out, PrintWriter err) {
        return new Main(in, out, err, new Terminal(false, false, Map.of()), BindPrep::check).whole();
    }

    private CommandLine whole() {
        CommandLine line = new CommandLine(new BindPrepCommand());
        for (Verb verb : verbs().values()) {
            line.addSubcommand(verb.whole());
        }
        line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, new CommandGroups());
        line.getHelpSectionMap().remove(UsageMessageSpec.SECTION_KEY_COMMAND_LIST_HEADING);
        return line;
    }

    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(stream, false, StandardCharsets.UTF_8);
    }

    /** Tells what ends badly. A class, as lambdas would keep these types of picocli's out of the class archive. */
    private static final class Failures implements IParameterExceptionHandler, IExecutionExceptionHandler {
        private final PrintWriter err;

        Failures(PrintWriter err) {
            this.err = err;
        }

        static int internal(PrintWriter err, Throwable e) {
            err.println(Problems.internal("command line", e));
            return ExitCode.INTERNAL;
        }

        @Override
        public int handleParseException(ParameterException e, String[] args) {
            CommandLine command = e.getCommandLine();
            err.println("bind-prep: " + UsageText.of(e));
            String meant = Suggestion.of(e);
            if (meant != null) {
                err.println("Did you mean: " + meant);
            }
            err.println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
            return ExitCode.USAGE;
        }

        @Override
        public int handleExecutionException(Exception e, CommandLine command, ParseResult parsed) {
            return internal(err, e);
        }
    }
}
