package io.bindprep.cli.job;

import io.bindprep.catalogue.PunchFile;
import io.bindprep.cli.console.Problems;
import io.bindprep.files.TextFile;
import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Files that an option names and the command reads itself. */
public final class NamedFiles {
    private NamedFiles() {}

    /** The whole text of one. */
    static String text(CommandSpec command, String option, Path file) {
        try {
            return TextFile.read(file);
        } catch (IOException e) {
            throw new ParameterException(command.commandLine(), Problems.cannotRead(option, file, e), e);
        }
    }

    /**
     * The name of a file to be written as YAML, without its ending.
     *
     * @throws ParameterException where the reader, which goes by the ending, would take it for something else
     */
    public static String yamlStem(CommandSpec command, Path target) {
        String name = String.valueOf(target.getFileName());
        if (!PunchFile.isNamed(name) || name.endsWith(".json")) {
            throw new ParameterException(
                    command.commandLine(), target + ": give it a name that ends in .yaml, for it is written as YAML");
        }
        return name.substring(0, name.lastIndexOf('.'));
    }

    /** The first line of a password file. */
    public static String password(CommandSpec command, Path file) {
        String line = text(command, "--password-file", file).lines().findFirst().orElse("");
        if (line.isEmpty()) {
            throw new ParameterException(
                    command.commandLine(), "--password-file: no password in the first line of " + file);
        }
        return line;
    }
}
