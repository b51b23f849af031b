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
            description =
                    "text; json (one object, or an array for several files or a folder); jsonl (one line per file)"
                            + " (text)")
    private Format format = Format.text;

    @Option(
            names = "--write",
            paramLabel = "FORMAT=FILE",
            description =
                    "also write a report to a file, as text, json, html, sarif, junit, xjdf, client, client-md or summary."
                            + " The client's tell the designer what to change, as HTML or Markdown. A summary is one"
                            + " table of all documents, in Markdown. Without FORMAT= the file's ending tells. {name}"
                            + " stands for the PDF's name. DIR/ writes every format into that folder. May be repeated")
    private List<String> writes = List.of();

    @Option(names = "--all-pages", description = "list every page in the JSON output, clear pages too")
    private boolean allPages;

    @Option(names = "--notes", description = "show notes, all numbers and every other setting of the punch in the text")
    private boolean notes;

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
            case text -> new TextOutput(out, notes ? terminal.style().withNotes() : terminal.style(), several);
        };
    }
}
