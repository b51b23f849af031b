package io.bindprep.cli.command;

import io.bindprep.cli.console.Problems;
import io.bindprep.day.Rates;
import io.bindprep.files.TextFile;
import io.bindprep.problem.SettingException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Reads the file of a shop's rates. */
final class RatesInput {
    private RatesInput() {}

    static Rates read(Path file) throws SettingException {
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
}
