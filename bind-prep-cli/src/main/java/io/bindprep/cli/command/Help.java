package io.bindprep.cli.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The help option, alike in each command that has no other mixin for it, and the command that it stands in. */
final class Help {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this help")
    @SuppressWarnings("unused") // read by picocli
    private boolean help;

    @Spec(Spec.Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by picocli before call
    private CommandSpec command;

    CommandSpec command() {
        return command;
    }
}
