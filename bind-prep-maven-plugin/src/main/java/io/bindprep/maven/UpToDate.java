package io.bindprep.maven;

import io.bindprep.files.Inputs;
import io.bindprep.files.TextFile;
import io.bindprep.files.WholeFile;
import io.bindprep.report.build.SummaryRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Remembers from build to build what was made of a document that failed nothing, so that it is made again only once
 * something that it depends on has changed: the document, its job, the goal's settings, the plugin, or a file made of it.
 */
final class UpToDate {
    /** The lines before those of the files. */
    private static final int HEAD = 5;

    private final Path folder;
    private final String execution;
    private final @Nullable String plugin;

    /**
     * Dependencies of one document.
     *
     * @param state where it is remembered; null where nothing is
     * @param digest of all of it
     * @param sha256 of the document alone
     */
    record Key(@Nullable Path state, String digest, String sha256, Path outputs) {}

    /**
     * Files of earlier builds.
     *
     * @param folder where it is remembered
     * @param execution which execution of which goal this is
     * @param plugin the plugin with all its libraries; null where it is not known or everything is to be made again
     */
    UpToDate(Path folder, String execution, @Nullable String plugin) {
        this.folder = folder;
        this.execution = execution;
        this.plugin = plugin;
    }

    /** Dependencies of a document now. */
    Key key(PdfInput document, String settings, JobSource.Asked asked, OutputFolder outputs) {
        Path file = document.file();
        if (plugin == null || !Files.isRegularFile(file)) {
            return new Key(null, "", "", outputs.directory());
        }
        try {
            String sha256 = Digests.of(file);
            String digest = Digests.of(
                    plugin,
                    settings,
                    document.name(),
                    document.report(),
                    sha256,
                    asked.text(),
                    outputs.directory().toString());
            String name = Digests.of(execution, document.report());
            return new Key(folder.resolve(name + ".txt"), digest, sha256, outputs.directory());
        } catch (IOException e) {
            // the reason is told when it is looked at
            return new Key(null, "", "", outputs.directory());
        }
    }

    /** Files of an earlier build, where they still stand; null where it has to be made. */
    @Nullable
    Made earlier(Key key) {
        Path state = key.state;
        if (state == null || !Files.isRegularFile(state)) {
            return null;
        }
        try {
            List<String> lines = TextFile.read(state).lines().toList();
            int last = HEAD + Integer.parseInt(lines.get(3));
            if (!lines.get(0).equals(key.digest) || !lines.get(2).equals(key.sha256)) {
                return null;
            }
            List<Path> files = new ArrayList<>();
            for (String line : lines.subList(HEAD, last)) {
                String[] sumAndName = line.split(" {2}", 2);
                Path file = key.outputs.resolve(sumAndName[1]);
                if (!Files.isRegularFile(file) || !Digests.of(file).equals(sumAndName[0])) {
                    return null;
                }
                files.add(file);
            }
            String message = String.join("\n", lines.subList(last, lines.size()));
            return new Made(Made.Level.valueOf(lines.get(1)), message, key.sha256, files, row(lines.get(4)));
        } catch (IOException | RuntimeException e) {
            // whatever spoilt it, making it again mends it
            return null;
        }
    }

    private static @Nullable SummaryRow row(String line) {
        String[] rankAndText = line.split(" ", 2);
        return line.isEmpty() ? null : new SummaryRow(SummaryRow.Rank.valueOf(rankAndText[0]), rankAndText[1]);
    }

    /** Remembers what was made of a document; no input is written over. */
    void remember(Key key, Made made, Inputs inputs) throws IOException {
        Path state = key.state;
        // a document that was replaced meanwhile is looked at again
        if (state == null || !made.sha256().equals(key.sha256)) {
            return;
        }
        StringBuilder text = new StringBuilder();
        text.append(key.digest).append('\n');
        text.append(made.level()).append('\n');
        text.append(key.sha256).append('\n');
        text.append(made.files().size()).append('\n');
        SummaryRow row = made.row();
        text.append(row == null ? "" : row.rank() + " " + row.text()).append('\n');
        for (Path file : made.files()) {
            text.append(Digests.of(file))
                    .append("  ")
                    .append(file.getFileName())
                    .append('\n');
        }
        text.append(made.message()).append('\n');
        Files.createDirectories(folder);
        WholeFile.write(state, text.toString(), inputs);
    }
}
