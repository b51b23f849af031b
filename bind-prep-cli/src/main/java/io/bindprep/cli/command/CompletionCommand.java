package io.bindprep.cli.command;

import io.bindprep.cli.console.ExitCode;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code bind-prep completion}: what teaches a shell the commands, options and words. */
@Command(
        name = "completion",
        addMethodSubcommands = false,
        description = "Prints a script that lets bash or zsh complete commands, options, stocks and other words.",
        customSynopsis = "bind-prep completion",
        sortOptions = false,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:printed", "2:wrong usage", "4:internal error, a bug in bind-prep"},
        footerHeading = "%nExamples:%n",
        footer = {
            "  . <(bind-prep completion)",
            "  bind-prep completion > ~/.local/share/bash-completion/completions/bind-prep"
        })
public final class CompletionCommand implements Callable<Integer> {
    @Mixin
    private final Help help = new Help();

    // a shell reads the file, nothing runs it
    private static final Pattern HASHBANG = Pattern.compile("\\A#!.*\n");

    // picocli names a list of words by the label of its option, so that two of one label would share one list
    private static final Pattern LISTED =
            Pattern.compile("(?<before> local )\\w+(?<after>_option_args=\\(.*\\) # --(?<option>[a-z-]+) values)");

    private static final Pattern OFFERED = Pattern.compile(
            "(?<before>'--(?<option>[a-z-]+)'\\)\n.*\n *COMPREPLY=.*\\$\\{)\\w+(?<after>_option_args\\[)");

    private final PrintWriter out;
    private final Supplier<CommandLine> whole;

    /** Of the whole command, with all its verbs. */
    public CompletionCommand(PrintWriter out, Supplier<CommandLine> whole) {
        this.out = out;
        this.whole = whole;
    }

    @Override
    public Integer call() {
        out.print(script(whole.get()));
        return ExitCode.GOOD;
    }

    public static String script(CommandLine line) {
        String script = HASHBANG.matcher(AutoComplete.bash("bind-prep", line).replace("\r\n", "\n"))
                .replaceFirst("");
        return named(OFFERED.matcher(named(LISTED.matcher(script))));
    }

    private static String named(Matcher words) {
        return words.replaceAll(found -> Matcher.quoteReplacement(
                words.group("before") + words.group("option").replace('-', '_') + words.group("after")));
    }
}
