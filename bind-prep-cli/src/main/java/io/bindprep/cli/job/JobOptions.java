package io.bindprep.cli.job;

import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.setting.KeyDescription;
import io.bindprep.setting.ValueShape;
import java.util.List;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParseResult;

/** Every job key as an option of the same name; which values will do, and which stand built in, is the core's to say. */
public final class JobOptions {
    private JobOptions() {}

    /** Gives a command these options where its arguments ask for one, or for help: fifty take their time. */
    public static void addTo(CommandSpec command, List<String> args) {
        if (args.stream().anyMatch(arg -> arg.startsWith("-") && asks(command, arg))) {
            addTo(command);
        }
    }

    // anything that begins like an option and is none of the command's own may be one of these, or must be told of them
    private static boolean asks(CommandSpec command, String arg) {
        OptionSpec own = command.findOption(arg.split("=", 2)[0]);
        return own == null || own.usageHelp();
    }

    /** Gives a command these options, under headings of their own. */
    public static void addTo(CommandSpec command) {
        int order = 1;
        for (JobGroups group : JobGroups.values()) {
            ArgGroupSpec.Builder made = ArgGroupSpec.builder()
                    .heading("%n" + group.heading() + ":%n")
                    .validate(false)
                    .order(order++);
            int place = 0;
            for (KeyDescription row : JobReader.descriptions()) {
                if (inOptions(row) && JobGroups.of(row.key()) == group) {
                    made.addArg(option(row, place++));
                }
            }
            command.addArgGroup(made.build());
        }
    }

    // a key without a label stands in files only
    private static boolean inOptions(KeyDescription row) {
        return !row.label().isEmpty();
    }

    private static OptionSpec option(KeyDescription row, int order) {
        return OptionSpec.builder("--" + row.key())
                .paramLabel(row.label())
                // picocli formats it
                .description(help(row).replace("%", "%%"))
                // a list, as in a group picocli takes a repeated option without a word
                .type(List.class)
                .auxiliaryTypes(String.class)
                .completionCandidates(() -> ShellWords.of(row).iterator())
                .order(order)
                .build();
    }

    // words that will do or an example, and what holds where nothing is said
    private static String help(KeyDescription row) {
        String words = row.shape() instanceof ValueShape.Words w ? ": " + String.join(", ", w.words()) : "";
        String example = words.isEmpty() && !row.form().isEmpty()
                ? ", such as \"" + row.examples().get(0) + "\""
                : "";
        return row.meaning() + words + example + " (" + row.unsaid() + ")";
    }

    /** The settings that options gave. */
    static JobSettings settings(ParseResult parsed) {
        JobSettings settings = JobSettings.empty();
        for (KeyDescription row : JobReader.descriptions()) {
            String option = "--" + row.key();
            List<String> values = parsed.matchedOptionValue(option, List.of());
            if (values.size() > 1) {
                throw new OverwrittenOptionException(
                        parsed.commandSpec().commandLine(),
                        parsed.matchedOption(option),
                        "option '" + option + "' should be specified only once");
            }
            if (!values.isEmpty()) {
                settings = settings.with(row.key(), values.get(0));
            }
        }
        return settings;
    }
}
