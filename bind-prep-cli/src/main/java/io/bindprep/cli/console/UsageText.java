package io.bindprep.cli.console;

import io.bindprep.wording.Printable;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Sentences on a command line that cannot be understood, without the parser's own terms. */
public final class UsageText {
    private UsageText() {}

    /** Sentence on the line; marks that could rewrite a screen are taken out. */
    public static String of(ParameterException e) {
        return Printable.page(sentence(e));
    }

    private static String sentence(ParameterException e) {
        ArgSpec option = e.getArgSpec();
        String value = e.getValue();
        if (e instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            String typed = unmatched.getUnmatched().get(0);
            boolean verb = !e.getCommandLine().getSubcommands().isEmpty();
            return (typed.startsWith("-") ? "no option is called " : verb ? "no command is called " : "too much: ")
                    + quoted(typed);
        }
        if (option instanceof OptionSpec named && value != null && option.type().isEnum()) {
            String known = Arrays.stream(option.type().getEnumConstants())
                    .map(String::valueOf)
                    .collect(Collectors.joining(", "));
            return named.longestName() + ": " + quoted(value) + " is not known; known: " + known;
        }
        return String.valueOf(e.getMessage());
    }

    private static String quoted(String typed) {
        return '"' + typed + '"';
    }
}
