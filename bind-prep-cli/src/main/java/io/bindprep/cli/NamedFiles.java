package io.bindprep.cli;

import io.bindprep.files.TextFile;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Files that an option names and the command reads itself. */
final class NamedFiles {
    private NamedFiles() {}

    /** The whole text of one. */
    static String text(CommandSpec command, String option, Path file) {
        try {
            return TextFile.read(file);
        } catch (IOException e) {
            throw new ParameterException(command.commandLine(), Problems.cannotRead(option, file, e), e);
        }
    }

    /** The first line of a password file. */
    static String password(CommandSpec command, Path file) {
        try (BufferedReader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            String line = reader.readLine();
            if (line == null || line.isEmpty()) {
                throw new ParameterException(
                        command.commandLine(), "--password-file: no password in the first line of " + file);
            }
            return line;
        } catch (IOException e) {
            throw new ParameterException(command.commandLine(), Problems.cannotRead("--password-file", file, e), e);
        }
    }
}
