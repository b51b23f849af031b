package io.bindprep.cli.console;

import io.bindprep.setting.RenamedKeys;
import io.bindprep.wording.Spelling;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Nearest command line to a mistyped one: a command, an option, or one of the words that an option takes. */
public final class Suggestion {
    private Suggestion() {}

    /** The nearest word that would do; null where none is near. */
    public static @Nullable String of(ParameterException e) {
        CommandLine command = e.getCommandLine();
        if (e instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            String typed = unmatched.getUnmatched().get(0);
            return typed.startsWith("-") ? option(typed, command) : verb(typed, command);
        }
        ArgSpec option = e.getArgSpec();
        String value = e.getValue();
        if (option == null || value == null || !option.type().isEnum()) {
            return null;
        }
        List<String> words = Arrays.stream(option.type().getEnumConstants())
                .map(String::valueOf)
                .toList();
        return Spelling.nearest(value, words);
    }

    private static @Nullable String option(String typed, CommandLine command) {
        int equals = typed.indexOf('=');
        String name = equals < 0 ? typed : typed.substring(0, equals);
        String renamed = RenamedKeys.now(name.replaceFirst("^--", "")).orElse(null);
        if (renamed != null) {
            return "--" + renamed + " (" + name + " is now --" + renamed + ")";
        }
        List<String> known = new ArrayList<>();
        for (OptionSpec option : command.getCommandSpec().options()) {
            known.addAll(List.of(option.names()));
        }
        // of one letter everything is near
        return name.length() < 3 ? null : Spelling.nearest(name, known);
    }

    private static @Nullable String verb(String typed, CommandLine command) {
        List<String> known = new ArrayList<>(command.getSubcommands().keySet());
        String near = Spelling.nearest(typed, known);
        return near == null ? null : command.getCommandName() + " " + near;
    }
}
