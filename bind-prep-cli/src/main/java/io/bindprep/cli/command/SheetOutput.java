package io.bindprep.cli.command;

import io.bindprep.sheet.SheetFormat;
import io.bindprep.sheet.SheetPaper;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Option;

/** Form and paper of sheets. */
final class SheetOutput {
    /** Paper of a PDF sheet. */
    enum PaperName {
        a4,
        letter
    }

    @Option(names = "--paper", paramLabel = "PAPER", description = "paper of a PDF sheet: a4 or letter (a4)")
    private PaperName paper = PaperName.a4;

    SheetPaper paper() {
        return paper == PaperName.a4 ? SheetPaper.A4 : SheetPaper.LETTER;
    }

    /** By the ending of the file's name: .html and .json, else PDF. */
    static SheetFormat format(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (name.endsWith(".html") || name.endsWith(".htm")) {
            return SheetFormat.HTML;
        }
        return name.endsWith(".json") ? SheetFormat.JSON : SheetFormat.PDF;
    }
}
