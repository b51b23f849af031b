package io.bindprep.cli.command;

import io.bindprep.cli.console.BuildFacts;
import io.bindprep.cli.console.ExitCode;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The word before the command's verbs; alone it can only tell its version and its verbs. */
@Command(
        name = "bind-prep",
        addMethodSubcommands = false,
        versionProvider = BindPrepCommand.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        description = "Checks a print-ready PDF before it is printed, punched and bound on wire, coil, comb or rings.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  bind-prep check book.pdf",
            "  bind-prep check --help",
            "  bind-prep init",
            "  bind-prep spec --job bind-prep.yaml book.pdf -o book-sheet.pdf"
        })
public final class BindPrepCommand implements Callable<Integer> {
    @Mixin
    @SuppressWarnings("unused") // read by picocli
    private final Help help = new Help();

    @Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "show the version and what it was built from")
    @SuppressWarnings("unused") // read by picocli
    private boolean version;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getErr();
        out.println("bind-prep checks a PDF before it is printed, punched and bound. Three things to do:");
        out.println();
        out.println("  bind-prep check book.pdf                  tells whether to print it, and how to bind it");
        out.println("  bind-prep spec book.pdf -o sheet.pdf      writes the job sheet for the bench");
        out.println("  bind-prep shift book.pdf -o repaired.pdf  moves the content clear of the holes");
        out.println();
        out.println("All commands: bind-prep --help. One command: bind-prep help check.");
        return ExitCode.USAGE;
    }

    /** The version this was built as. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return BuildFacts.read().lines();
        }
    }
}
