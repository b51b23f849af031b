package io.bindprep.cli.watch;

import io.bindprep.ReportFormat;
import io.bindprep.cli.console.Choice;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/** Options of {@code check} that watch a folder. */
public final class WatchOptions {
    private static final Pattern TIME =
            Pattern.compile("(\\d{1,6})\\s*(s|sec|secs|seconds?|m|min|mins|minutes?|h|hours?)?");
    private static final int MOST_SECONDS = 3_600;
    private static final Duration INTERVAL = Duration.ofSeconds(2);
    private static final List<String> REPORTS = List.of("text", "json");

    private final OptionSpec folder = Choice.of(
            Path.class,
            "--watch",
            "DIR",
            "watch this folder: check each new PDF once it has stopped growing, until Ctrl-C");

    private final OptionSpec out =
            Choice.of(Path.class, "--out", "DIR", "folder for the reports, created if missing (beside each PDF)");

    private final OptionSpec reports = OptionSpec.builder("--reports")
            .type(List.class)
            .auxiliaryTypes(String.class)
            .paramLabel("FORMATS")
            .splitRegex(",")
            .description("formats of the reports, such as \"html,json\" (text,json)")
            .build();

    private final OptionSpec once =
            Choice.flag("--once", "end after one scan of the folder; the exit code is that of the worst file");

    private final OptionSpec interval = Choice.of(
            String.class,
            "--interval",
            "TIME",
            "time between scans, such as 5s or 1min; a bare number counts seconds (2s)");

    /** The options, in their place among the groups of the help. */
    public ArgGroupSpec group(int order) {
        return Choice.group(order, "Watching a folder", folder, out, reports, once, interval);
    }

    /** Folder to watch, and the way to. */
    public record Settings(Path folder, Path out, List<ReportFormat> reports, boolean once, Duration interval) {}

    /** Returns true if a folder is to be watched. */
    public boolean asked() {
        return folder.getValue() != null;
    }

    /** Fails where one of the others is given without {@code --watch}. */
    public void checkUnused(CommandSpec command) {
        for (String option : List.of("--out", "--reports", "--once", "--interval")) {
            if (command.commandLine().getParseResult().hasMatchedOption(option)) {
                throw wrong(command, option + " goes with --watch");
            }
        }
    }

    /** Reads what was asked for; fails on what cannot be. */
    public Settings settings(CommandSpec command) {
        Path watched = folder.getValue();
        Path target = out.getValue();
        if (!Files.isDirectory(watched)) {
            throw wrong(command, "--watch: there is no folder " + watched);
        }
        Duration between = interval(command);
        List<String> asked = Choice.all(reports);
        List<ReportFormat> formats = new ArrayList<>();
        for (String id : asked.isEmpty() ? REPORTS : asked) {
            formats.add(ReportFormat.of(id.strip())
                    .orElseThrow(() -> wrong(
                            command,
                            "--reports: no format is called \"" + id.strip() + "\"; formats: "
                                    + String.join(", ", ReportFormat.ids()))));
        }
        return new Settings(watched, target == null ? watched : target, formats, Choice.given(once), between);
    }

    private Duration interval(CommandSpec command) {
        String given = interval.getValue();
        if (given == null) {
            return INTERVAL;
        }
        Matcher m = TIME.matcher(given.strip().toLowerCase(Locale.ROOT));
        if (m.matches()) {
            String unit = m.group(2) == null ? "s" : m.group(2);
            long seconds = Long.parseLong(m.group(1)) * (unit.startsWith("h") ? 3600 : unit.startsWith("m") ? 60 : 1);
            if (seconds >= 1 && seconds <= MOST_SECONDS) {
                return Duration.ofSeconds(seconds);
            }
        }
        throw wrong(
                command, "--interval: \"" + given + "\" is not a time from 1s to " + MOST_SECONDS + "s, such as 5s");
    }

    private static ParameterException wrong(CommandSpec command, String message) {
        return new ParameterException(command.commandLine(), message);
    }
}
