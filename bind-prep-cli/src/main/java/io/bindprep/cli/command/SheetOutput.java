package io.bindprep.cli.command;

import io.bindprep.sheet.SheetPaper;
import picocli.CommandLine.Option;

/** Paper of sheets. */
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
}
