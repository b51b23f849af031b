package io.bindprep.cli.output;

import io.bindprep.cli.console.Choice;
import io.bindprep.cli.console.Terminal;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Options of {@code check} for its answers. */
public final class OutputOptions {
    /** Form of the answers. */
    public enum Format {
        text,
        json,
        jsonl
    }

    private final OptionSpec format = Choice.of(
            Format.class,
            "--format",
            "FORMAT",
            "text; json (one object, or an array for several files or a folder); jsonl (one line per file) (text)");

    private final OptionSpec writes = OptionSpec.builder("--write")
            .type(List.class)
            .auxiliaryTypes(String.class)
            .paramLabel("FORMAT=FILE")
            .description(
                    "also write a report to a file, as text, json, html, sarif, junit, xjdf, client, client-md or summary."
                            + " The client's tell the designer what to change, as HTML or Markdown. A summary is one"
                            + " table of all documents, in Markdown. Without FORMAT= the file's ending tells. {name}"
                            + " stands for the PDF's name. DIR/ writes every format into that folder. May be repeated")
            .build();

    private final OptionSpec allPages =
            Choice.flag("--all-pages", "list every page in the JSON output, clear pages too");

    private final OptionSpec notes =
            Choice.flag("--notes", "show notes, all numbers and every other setting of the punch in the text");

    /** The options, in their place among the groups of the help. */
    public ArgGroupSpec group(int order) {
        return Choice.group(order, "Answers", format, writes, allPages, notes);
    }

    public Format format() {
        Format asked = format.getValue();
        return asked == null ? Format.text : asked;
    }

    /** Requested reports, each as it was typed. */
    public List<String> writes() {
        return Choice.all(writes);
    }

    /** Standard output in the form asked for. */
    public ReportOutput open(PrintWriter out, Terminal terminal, boolean several) {
        return switch (format()) {
            case json -> new JsonOutput(out, several, Choice.given(allPages));
            case jsonl -> new LineOutput(out, Choice.given(allPages));
            case text ->
                new TextOutput(out, Choice.given(notes) ? terminal.style().withNotes() : terminal.style(), several);
        };
    }
}
