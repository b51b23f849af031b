package io.bindprep.cli.watch;

import io.bindprep.ReportFormat;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** Options of {@code check} that watch a folder. */
public final class WatchOptions {
    private static final int MOST_SECONDS = 3_600;

    @Option(
            names = "--watch",
            paramLabel = "DIR",
            description =
                    "check each PDF that comes into this folder or below, once it has stopped growing, until Ctrl-C")
    private @Nullable Path folder;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "where their reports go, in folders as there; made where it is missing (beside each PDF)")
    private @Nullable Path out;

    @Option(
            names = "--reports",
            paramLabel = "FORMATS",
            split = ",",
            description = "the reports to write of each, such as \"html,json\" (text,json)")
    private List<String> reports = List.of("text", "json");

    @Option(names = "--once", description = "end after one pass over what is there, with the exit code of the worst")
    private boolean once;

    @Option(names = "--interval", paramLabel = "SECONDS", description = "look so often (2)")
    private int interval = 2;

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
        if (interval < 1 || interval > MOST_SECONDS) {
            throw wrong(command, "--interval: \"" + interval + "\" is not from 1 to " + MOST_SECONDS);
        }
        List<ReportFormat> formats = new ArrayList<>();
        for (String id : reports) {
            formats.add(ReportFormat.of(id.strip())
                    .orElseThrow(() -> wrong(
                            command,
                            "--reports: no format is called \"" + id.strip() + "\"; formats: "
                                    + String.join(", ", ReportFormat.ids()))));
        }
        return new Settings(watched, out == null ? watched : out, formats, once, Duration.ofSeconds(interval));
    }

    private static ParameterException wrong(CommandSpec command, String message) {
        return new ParameterException(command.commandLine(), message);
    }
}
