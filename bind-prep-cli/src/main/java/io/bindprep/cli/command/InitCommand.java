package io.bindprep.cli.command;

import io.bindprep.catalogue.Catalogue;
import io.bindprep.catalogue.Punch;
import io.bindprep.catalogue.PunchText;
import io.bindprep.catalogue.Punches;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.job.NamedFiles;
import io.bindprep.files.Inputs;
import io.bindprep.files.WholeFile;
import io.bindprep.job.JobText;
import io.bindprep.wording.Printable;
import io.bindprep.wording.Spelling;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** {@code bind-prep init}: a commented job or punch file to begin with. */
@Command(
        name = "init",
        addMethodSubcommands = false,
        description = "Writes a job file or punch file to start from, with comments.",
        customSynopsis = "bind-prep init [OPTIONS] [FILE]",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:written",
            "2:wrong usage, the file is there already, or it cannot be written",
            "4:internal error, a bug in bind-prep"
        },
        footerHeading = "%nExamples:%n",
        footer = {"  bind-prep init", "  bind-prep init --punch --like generic-W2_1i-square-0t bench.yaml"})
public final class InitCommand implements Callable<Integer> {
    private static final Path JOB = Path.of("bind-prep.yaml");
    private static final Path PUNCH = Path.of("punch.yaml");
    private static final String LIKE = "generic-W3_1i-square-0t";

    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "the file to write (bind-prep.yaml; with --punch punch.yaml)")
    private @Nullable Path file;

    @Option(names = "--punch", description = "a punch file, not a job file")
    private boolean punch;

    @Option(names = "--like", paramLabel = "PUNCH", description = "the built-in punch to start from (" + LIKE + ")")
    private @Nullable String like;

    @Option(names = "--force", description = "overwrite an existing file")
    private boolean force;

    @Mixin
    private final Help help = new Help();

    private final PrintWriter out;

    public InitCommand(PrintWriter out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        if (like != null && !punch) {
            throw wrong("--like goes with --punch");
        }
        Path target = file != null ? file : punch ? PUNCH : JOB;
        String name = NamedFiles.yamlStem(help.command(), target);
        String text = punch ? punchText(name) : JobText.builtIn();
        if (!force && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw wrong(target + " is there already; give another name, or --force to write over it");
        }
        try {
            WholeFile.write(target, text, Inputs.NONE);
        } catch (IOException e) {
            throw wrong(String.valueOf(e.getMessage()));
        }
        String named = Printable.of(target.toString());
        out.println("Written: " + named);
        out.println("Use it:  bind-prep check " + (punch ? "--punch " : "--job ") + named + " book.pdf");
        return ExitCode.GOOD;
    }

    private String punchText(String name) {
        String named = like == null ? LIKE : like;
        Punches punches = Catalogue.builtIn().punches();
        Punch begin = punches.byId(named).orElseThrow(() -> {
            String near = Spelling.nearest(
                    named, punches.all().stream().map(Punch::id).toList());
            return wrong("--like: no punch \"" + named + "\"; see: bind-prep list punches"
                    + (near == null ? "" : "\nDid you mean: " + near));
        });
        return PunchText.of(begin.named(name));
    }

    private ParameterException wrong(String message) {
        return new ParameterException(help.command().commandLine(), message);
    }
}
