package io.bindprep.cli.output;

import io.bindprep.cli.console.Terminal;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Option;

/** Options of {@code check} for its answers. */
public final class OutputOptions {
    /** Form of the answers. */
    public enum Format {
        text,
        json,
        jsonl
    }

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "text; json: one object, an array of them for several files or a folder; or jsonl: one line a"
                    + " file (text)")
    private Format format = Format.text;

    @Option(
            names = "--write",
            paramLabel = "FORMAT=FILE",
            description =
                    "also write a report to a file, in the format text, json, html, sarif, junit or xjdf, or that of the"
                            + " file's ending where FORMAT= is left out; {name} in it"
                            + " stands for each PDF's name; or DIR/: every format into that folder; may be repeated")
    private List<String> writes = List.of();

    @Option(
            names = "--all-pages",
            description = "list every page in the JSON on standard output, not only those that are not clear")
    private boolean allPages;

    public Format format() {
        return format;
    }

    /** Requested reports, each as it was typed. */
    public List<String> writes() {
        return writes;
    }

    /** Standard output in the form asked for. */
    public ReportOutput open(PrintWriter out, Terminal terminal, boolean several) {
        return switch (format) {
            case json -> new JsonOutput(out, several, allPages);
            case jsonl -> new LineOutput(out, allPages);
            case text -> new TextOutput(out, terminal.style(), several);
        };
    }
}
