package io.bindprep.cli.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The help option, alike in each command that has no other mixin for it, and the command that it stands in. */
final class Help {
    private static final String SHORT = "-h";
    private static final String LONG = "--help";
    private static final String MEANING = "show this help";

    @Option(
            names = {SHORT, LONG},
            usageHelp = true,
            description = MEANING)
    @SuppressWarnings("unused") // read by picocli
    private boolean help;

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private CommandSpec command;

    /** The option alone, for a command made by calls. */
    static OptionSpec option() {
        return OptionSpec.builder(SHORT, LONG)
                .usageHelp(true)
                .type(boolean.class)
                .description(MEANING)
                .build();
    }

    CommandSpec command() {
        return command;
    }
}
