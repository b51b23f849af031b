package io.bindprep.cli.command;

import io.bindprep.check.Report;
import io.bindprep.cli.console.Choice;
import io.bindprep.cli.console.ExitCode;
import io.bindprep.cli.console.Problems;
import io.bindprep.cli.job.JobInput;
import io.bindprep.files.Inputs;
import io.bindprep.files.TextFile;
import io.bindprep.files.WholeFile;
import io.bindprep.job.Acceptance;
import io.bindprep.job.AcceptanceText;
import io.bindprep.problem.SettingException;
import io.bindprep.wording.Counted;
import io.bindprep.wording.PageLists;
import io.bindprep.wording.Printable;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** Options of {@code check} that write findings that may pass into a job file. */
final class AcceptOptions {
    private final OptionSpec into = Choice.of(
            Path.class,
            "--accept-into",
            "JOB.yaml",
            "add the errors and warnings found to this job file as accepted, each bound to what was seen."
                    + " Its other lines stay. Remove those that must not pass");

    private final OptionSpec reason =
            Choice.of(String.class, "--accept-reason", "TEXT", "why they may pass; goes with --accept-into");

    private final OptionSpec who =
            Choice.of(String.class, "--accept-who", "NAME", "who lets them pass; goes with --accept-into");

    ArgGroupSpec group(int order) {
        return Choice.group(order, "Accepting findings", into, reason, who);
    }

    boolean asked() {
        return into.getValue() != null;
    }

    /** Refuses what does not go together. */
    void check(CommandSpec command, boolean oneFile) {
        Path file = into.getValue();
        if (file == null) {
            if (reason.getValue() != null || who.getValue() != null) {
                throw wrong(command, "--accept-reason and --accept-who go with --accept-into");
            }
            return;
        }
        if (blank(reason.getValue()) || blank(who.getValue())) {
            throw wrong(command, "--accept-into needs --accept-reason and --accept-who, for those who read it later");
        }
        if (!oneFile) {
            throw wrong(command, "--accept-into goes with one FILE, whose findings are accepted");
        }
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (!name.endsWith(".yaml") && !name.endsWith(".yml")) {
            throw wrong(command, "--accept-into: " + file + " is not a YAML job file; end its name in .yaml");
        }
    }

    /** Writes them, over a job file and no other input; returns the exit code of the writing alone. */
    int write(Report report, Inputs read, PrintWriter err) {
        Path file = into.getValue();
        String why = reason.getValue();
        String name = who.getValue();
        List<Acceptance> found = report.acceptable().stream()
                .map(f -> new Acceptance(f.rule(), PageLists.compact(f.pages()), why, name, report.seen(f)))
                .toList();
        if (found.isEmpty()) {
            err.println("Nothing to accept. " + Printable.of(file.toString()) + " is unchanged.");
            return ExitCode.GOOD;
        }
        try {
            String before = Files.exists(file) ? TextFile.read(file) : "";
            WholeFile.write(file, AcceptanceText.added(before, found, file.toString()), read.without(JobInput.JOB));
            err.println("Accepted " + Counted.of(found.size(), "finding") + " into " + Printable.of(file.toString())
                    + "; remove those that must not pass.");
            return ExitCode.GOOD;
        } catch (SettingException e) {
            err.println(Problems.setting(e, null));
        } catch (IOException e) {
            err.println(Problems.cannotWrite("--accept-into", file, e));
        }
        return ExitCode.USAGE;
    }

    private static boolean blank(@Nullable String text) {
        return text == null || text.isBlank();
    }

    private static ParameterException wrong(CommandSpec command, String message) {
        return new ParameterException(command.commandLine(), message);
    }
}
