package io.bindprep.cli.share;

import io.bindprep.cli.Main;
import io.bindprep.cli.command.CompletionCommand;
import io.bindprep.cli.console.BuildFacts;
import io.bindprep.files.Inputs;
import io.bindprep.files.WholeFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import picocli.CommandLine;

/** Files handed out beside the command, made by the build: manual pages and the completion of shells. */
final class ShareFiles {
    private ShareFiles() {}

    /**
     * Writes them below a folder as systems have them: {@code man/man1} and {@code bash-completion/completions}.
     *
     * @param args the folder
     */
    public static void main(String[] args) throws IOException {
        write(Path.of(args[0]));
    }

    static void write(Path share) throws IOException {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        CommandLine line = Main.whole(InputStream.nullInputStream(), nowhere, nowhere);
        Path pages = Files.createDirectories(share.resolve("man/man1"));
        for (Map.Entry<String, String> page :
                ManPage.all(line, BuildFacts.read().version()).entrySet()) {
            WholeFile.write(pages.resolve(page.getKey()), page.getValue(), Inputs.NONE);
        }
        Path completions = Files.createDirectories(share.resolve("bash-completion/completions"));
        WholeFile.write(completions.resolve("bind-prep"), CompletionCommand.script(line), Inputs.NONE);
    }
}
