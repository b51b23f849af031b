package io.bindprep.cli;

import io.bindprep.job.JobSettings;
import java.util.List;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParseResult;

/** Every job key as an option of the same name; which values will do, and which stand built in, is the core's to say. */
final class JobOptions {
    /** One job key: how its value is called in the help, and what it means. */
    private record Row(String key, String label, String meaning) {}

    private static final List<Row> ROWS = List.of(
            new Row("copies", "NUMBER", "how many books (1)"),
            new Row("sides", "SIDES", "one, two or two-head-to-foot (two)"),
            new Row("bound-edge", "EDGE", "the edge of page 1 that is bound: left, right or top (left)"),
            new Row("trim", "SIZE", "page size expected, such as a4 (that of most pages)"),
            new Row("stock", "STOCK", "paper of the block (bond-20)"),
            new Row("covers", "COVERS", "such as \"front=film-75, back=coverboard-30\" (none)"),
            new Row("inserts", "INSERTS", "pages on other stock, such as \"5-8 on tag-150\" (none)"),
            new Row("binding", "METHOD", "wire, coil, comb or rings (wire)"),
            new Row("pitch", "PITCH", "3:1, 2:1 or a pattern's name (what suits the stack)"),
            new Row("punch", "PUNCH", "the punch it runs on (the pattern's own)"),
            new Row("clear-margin", "LENGTH", "what print keeps from the bound edge (the pattern's own)"),
            new Row("registration", "LENGTH", "how far a hole may lie off, either way (1 mm)"),
            new Row("clearance", "LENGTH", "what the element is wider than the stack (1/8 in)"),
            new Row("overs", "OVERS", "spare sheets, a percentage and a least number (\"5 %, at least 10\")"),
            new Row("fail-on", "SEVERITY", "least severity that fails: error, warning or never (error)"));

    private JobOptions() {}

    /** Gives a command these options, under a heading of their own. */
    static void addTo(CommandSpec command) {
        ArgGroupSpec.Builder group = ArgGroupSpec.builder()
                .heading("%nThe job, by the keys of a job file (in brackets: where nothing is said):%n")
                .validate(false)
                .order(1);
        for (Row row : ROWS) {
            group.addArg(OptionSpec.builder("--" + row.key())
                    .paramLabel(row.label())
                    .description(row.meaning())
                    // a list, as in a group picocli takes a repeated option without a word
                    .type(List.class)
                    .auxiliaryTypes(String.class)
                    .order(ROWS.indexOf(row))
                    .build());
        }
        command.addArgGroup(group.build());
    }

    /** The settings that options gave. */
    static JobSettings settings(ParseResult parsed) {
        JobSettings settings = JobSettings.empty();
        for (Row row : ROWS) {
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
