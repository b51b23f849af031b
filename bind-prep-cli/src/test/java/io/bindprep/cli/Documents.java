package io.bindprep.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Texts that tell people how to use bind-prep. */
final class Documents {
    static final Path README = Cli.ROOT.resolve("README.md");

    private Documents() {}

    static List<Path> all() {
        return Stream.of(
                        "README.md",
                        "bind-prep-cli/GUIDE.md",
                        "bind-prep-maven-plugin/README.md",
                        "bind-prep-core/README.md",
                        "bind-prep-core/GLOSSARY.md")
                .map(Cli.ROOT::resolve)
                .toList();
    }

    static String read(Path text) {
        try {
            return Files.readString(text).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
