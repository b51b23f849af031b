package io.bindprep.cli.watch;

import io.bindprep.ReportFormat;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Options of {@code check} that watch a folder. */
public final class WatchOptions {
    private static final Pattern TIME =
            Pattern.compile("(\\d{1,6})\\s*(s|sec|secs|seconds?|m|min|mins|minutes?|h|hours?)?");
    private static final int MOST_SECONDS = 3_600;

    @Option(
            names = "--watch",
            paramLabel = "DIR",
            description = "watch this folder: check each new PDF once it has stopped growing, until Ctrl-C")
    private @Nullable Path folder;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "folder for the reports, created if missing (beside each PDF)")
    private @Nullable Path out;

    @Option(
            names = "--reports",
            paramLabel = "FORMATS",
            split = ",",
            description = "formats of the reports, such as \"html,json\" (text,json)")
    private List<String> reports = List.of("text", "json");

    @Option(names = "--once", description = "end after one scan of the folder; the exit code is that of the worst file")
    private boolean once;

    @Option(
            names = "--interval",
            paramLabel = "TIME",
            description = "time between scans, such as 5s or 1min; a bare number counts seconds (2s)")
    private String interval = "2s";

    /** Folder to watch, and the way to. */
    public record Settings(Path folder, Path out, List<ReportFormat> reports, boolean once, Duration interval) {}

    /** Returns true if a folder is to be watched. */
    public boolean asked() {
        return folder != null;
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
        Path watched = Objects.requireNonNull(folder);
        if (!Files.isDirectory(watched)) {
            throw wrong(command, "--watch: there is no folder " + watched);
        }
        Duration between = interval(command);
        List<ReportFormat> formats = new ArrayList<>();
        for (String id : reports) {
            formats.add(ReportFormat.of(id.strip())
                    .orElseThrow(() -> wrong(
                            command,
                            "--reports: no format is called \"" + id.strip() + "\"; formats: "
                                    + String.join(", ", ReportFormat.ids()))));
        }
        return new Settings(watched, out == null ? watched : out, formats, once, between);
    }

    private Duration interval(CommandSpec command) {
        Matcher m = TIME.matcher(interval.strip().toLowerCase(Locale.ROOT));
        if (m.matches()) {
            String unit = m.group(2) == null ? "s" : m.group(2);
            long seconds = Long.parseLong(m.group(1)) * (unit.startsWith("h") ? 3600 : unit.startsWith("m") ? 60 : 1);
            if (seconds >= 1 && seconds <= MOST_SECONDS) {
                return Duration.ofSeconds(seconds);
            }
        }
        throw wrong(
                command, "--interval: \"" + interval + "\" is not a time from 1s to " + MOST_SECONDS + "s, such as 5s");
    }

    private static ParameterException wrong(CommandSpec command, String message) {
        return new ParameterException(command.commandLine(), message);
    }
}
