package io.bindprep.cli.command;

import io.bindprep.cli.console.Problems;
import io.bindprep.day.Rates;
import io.bindprep.files.Inputs;
import io.bindprep.files.TextFile;
import io.bindprep.problem.SettingException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** File of a shop's rates. */
final class RatesInput {
    @Option(
            names = "--rates",
            paramLabel = "FILE",
            description = "the shop's rates, YAML or JSON, for time and cost; nothing is built in")
    private @Nullable Path file;

    boolean given() {
        return file != null;
    }

    /** The rates; null where none are given. */
    @Nullable
    Rates read() throws SettingException {
        if (file == null) {
            return null;
        }
        try {
            return Rates.read(TextFile.read(file), file.toString());
        } catch (IOException e) {
            throw new SettingException(
                    "rates",
                    file.toString(),
                    Problems.cannotRead("--rates", file, e),
                    "Name a file that is there.",
                    List.of());
        }
    }

    /** Inputs that no result is written over, this file among them. */
    Inputs plus(Inputs inputs) {
        return file == null ? inputs : inputs.plus("the rates", file);
    }
}
