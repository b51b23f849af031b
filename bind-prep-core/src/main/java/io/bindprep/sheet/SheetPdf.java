package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.paint.PaintedPdf;
import io.bindprep.paint.Type;
import io.bindprep.report.words.JobNumbers;
import io.bindprep.run.Step;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Writes a job sheet as a PDF in black and white with its typefaces embedded; the same sheet gives the same bytes.
 *
 * <p>What the operator sets stands in print that reads from a metre away; the binding edge is drawn at true size, so it must
 * be printed at full size, which a bar shows.
 */
public final class SheetPdf {
    /** Height of a tile with one line of notes. */
    private static final double TILE = 18.4;

    private static final double NOTE = 6.8;
    private static final double NOTE_STEP = 2.8;
    private static final int MOST_TILES = 4;
    private static final double LARGE = 26;
    private static final double ANSWER = 22;

    private final JobSheet sheet;
    private final Flow flow;
    private final Type plain;
    private final Type bold;

    private SheetPdf(JobSheet sheet, Flow flow, Type plain, Type bold) {
        this.sheet = sheet;
        this.flow = flow;
        this.plain = plain;
        this.bold = bold;
    }

    /**
     * Writes the sheet; the stream stays open.
     *
     * @throws IOException where the stream cannot be written
     */
    public static void write(JobSheet sheet, SheetPaper paper, OutputStream out) throws IOException {
        try (PaintedPdf document = new PaintedPdf()) {
            paint(sheet, document, paper);
            document.save("Job sheet: " + sheet.title(), out);
        }
    }

    /** Paints the sheet behind the pages that the document has. */
    static void paint(JobSheet sheet, PaintedPdf document, SheetPaper paper) throws IOException {
        Type plain = document.plain();
        SheetPdf pdf = new SheetPdf(sheet, new Flow(document, paper), plain, document.bold());
        pdf.paint();
        String digest = sheet.checked() ? "sha256 " + sheet.digest().substring(0, 16) : "no PDF was checked";
        pdf.flow.finish(plain, sheet.file() + " · job " + sheet.jobId() + " · " + digest);
    }

    private void paint() throws IOException {
        new TitleBlock(sheet, plain, bold).paint(flow);
        verdict();
        StepPainter steps = new StepPainter(flow, plain, bold);
        for (int part = 0; part < sheet.parts().size(); part++) {
            if (part > 0) {
                flow.nextPage();
                title();
            }
            settings(sheet.parts().get(part));
            edge(sheet.parts().get(part));
            if (part == 0) {
                cautions();
            }
            List<Step> work = sheet.parts().get(part).steps();
            new LiftPainter(sheet, sheet.parts().get(part), flow, plain, bold).paint(steps.height(work));
            steps.paint("At the punch, in this order", work);
        }
        // page 1 and those of volumes are for the operator, unless the steps run on beyond them
        if (flow.page() == 1 || sheet.parts().size() > 1) {
            flow.nextPage();
            title();
        }
        steps.paint("Before the punch", sheet.before());
        materials();
        faults();
        numbers();
        whatIf();
        reasons();
    }

    /** Whose page it is, as pages come apart at the bench. */
    private void title() throws IOException {
        String number = sheet.order().number();
        flow.paragraph(bold, 11, 0, sheet.title() + (number == null || number.isEmpty() ? "" : " \u00b7 " + number));
    }

    /** The answer in large print, what it rests on beside it or below. */
    private void verdict() throws IOException {
        String word = sheet.answer().toUpperCase(Locale.ROOT);
        double beside = 4 + bold.widthMm(word, ANSWER) + 6;
        boolean below =
                plain.lines(sheet.grounds(), 10, flow.room() - beside - 4).size() > 1;
        List<String> lines = plain.lines(sheet.grounds(), 10, flow.room() - (below ? 8 : beside + 4));
        double height = 11 + (below ? lines.size() * 4.2 : 0);
        flow.need(height);
        Ink ink = flow.ink();
        ink.width(0.7);
        ink.box(flow.left(), flow.y(), flow.room(), height, !sheet.good());
        ink.grey(sheet.good() ? 0 : 1);
        ink.text(bold, ANSWER, flow.left() + 4, flow.y() + 8.2, word);
        double at = flow.y() + (below ? 12.8 : 8.2);
        for (String line : lines) {
            ink.text(plain, 10, flow.left() + (below ? 4 : beside), at, line);
            at += 4.2;
        }
        ink.grey(0);
        flow.down(height + 1);
    }

    private void faults() throws IOException {
        if (sheet.faults().isEmpty()) {
            return;
        }
        flow.heading(bold, "Findings", 8);
        for (String fault : sheet.faults()) {
            flow.need(flow.height(plain, 8, 0, fault) + 1);
            flow.paragraph(plain, 8, 0, fault);
            flow.down(1);
        }
    }

    /** Tiles in the order of the work, as high as the notes of their row ask for. */
    private void settings(JobSheet.VolumeSettings part) throws IOException {
        List<OperatorSetting> settings = part.settings();
        int across = settings.size() > 2 * (MOST_TILES - 1) ? MOST_TILES : MOST_TILES - 1;
        double width = flow.room() / across;
        double high = 0;
        for (int i = 0; i < settings.size(); i += across) {
            high += tileHeight(settings.subList(i, Math.min(i + across, settings.size())), width);
        }
        flow.heading(bold, (part.name().isEmpty() ? "" : part.name() + ": ") + "settings, in this order", high);
        flow.down(1);
        for (int i = 0; i < settings.size(); i += across) {
            List<OperatorSetting> row = settings.subList(i, Math.min(i + across, settings.size()));
            double height = tileHeight(row, width);
            for (int column = 0; column < across; column++) {
                flow.ink().width(0.2);
                flow.ink().box(flow.left() + column * width, flow.y(), width, height, false);
                if (column < row.size()) {
                    tile(i + column + 1, row.get(column), flow.left() + column * width, width);
                }
            }
            flow.down(height);
        }
        flow.down(1);
    }

    private double tileHeight(List<OperatorSetting> row, double width) {
        int most = row.stream()
                .mapToInt(s -> plain.lines(s.note(), NOTE, width - 4).size())
                .max()
                .orElse(1);
        return TILE + (most - 1) * NOTE_STEP;
    }

    private void tile(int number, OperatorSetting setting, double x, double width) throws IOException {
        Ink ink = flow.ink();
        double y = flow.y();
        ink.text(plain, 8, x + 2, y + 4, number + "  " + plain.settable(setting.label()));
        double size = LARGE;
        String value = bold.settable(setting.value());
        while (size > 9 && bold.widthMm(value, size) > width - 4) {
            size--;
        }
        ink.text(bold, size, x + 2, y + 13, bold.lines(value, size, width - 4).get(0));
        double at = y + 16.6;
        for (String line : plain.lines(setting.note(), NOTE, width - 4)) {
            ink.text(plain, NOTE, x + 2, at, line);
            at += NOTE_STEP;
        }
    }

    private void edge(JobSheet.VolumeSettings part) throws IOException {
        EdgePainter painter = new EdgePainter(part.edge(), flow.room());
        flow.heading(
                bold,
                "Last, punch a waste sheet and lay it on this drawing: "
                        + part.edge().face() + ", " + part.edge().start() + " to the guide",
                painter.pieceHeight());
        for (int piece = 0; piece < painter.pieces(); piece++) {
            flow.need(painter.pieceHeight());
            painter.paint(new InkPen(flow.ink(), plain, bold), piece, flow.left(), flow.y());
            flow.down(painter.pieceHeight());
        }
        flow.paragraph(plain, 7, 0, part.edge().caption());
        flow.need(6);
        Ink ink = flow.ink();
        double y = flow.y() + 2.5;
        ink.width(0.4);
        double end = flow.left() + sheet.bar().mm();
        ink.line(flow.left(), y, end, y);
        ink.line(flow.left(), y - 1.5, flow.left(), y + 1.5);
        ink.line(end, y - 1.5, end, y + 1.5);
        ink.text(
                plain,
                7,
                end + 3,
                y + 1,
                "This bar is " + sheet.barWords() + " long where the sheet was printed at full size.");
        flow.down(5);
    }

    private void materials() throws IOException {
        // a table of a few rows is kept whole, a longer one runs on
        flow.heading(bold, "Materials", Math.min(8, sheet.materials().size()) * 5 + 2);
        double[] shares = {0.24, 0.26, 0.1, 0.12, 0.08, 0.2};
        for (List<String> cells : sheet.materials()) {
            flow.row(cells == sheet.materials().get(0) ? bold : plain, cells, shares);
        }
    }

    /** All in one paragraph below the drawing, so that they stay on the operator's page however long the steps are. */
    private void cautions() throws IOException {
        // the sign and the first word of its caution stay on one line
        String all = sheet.cautions().stream().map(c -> "!\u00a0" + c).collect(Collectors.joining("  "));
        flow.need(flow.height(plain, 7, 0, all));
        flow.paragraph(plain, 7, 0, all);
    }

    private void numbers() throws IOException {
        flow.heading(bold, "The job in numbers", 8);
        for (JobNumbers.Entry entry : sheet.numbers()) {
            flow.need(4);
            flow.ink().text(bold, 7.5, flow.left(), flow.y() + 2.6, plain.settable(entry.label()));
            for (String line : entry.lines()) {
                flow.paragraph(plain, 7.5, 22, line);
            }
        }
    }

    private void whatIf() throws IOException {
        if (sheet.whatIf().isEmpty()) {
            return;
        }
        flow.heading(bold, "What if", sheet.whatIf().size() * Flow.SMALL_STEP);
        boolean allChecked = sheet.whatIf().get(0).size() == 5;
        double[] shares =
                allChecked ? new double[] {0.2, 0.12, 0.24, 0.24, 0.2} : new double[] {0.2, 0.12, 0.2, 0.2, 0.12, 0.16};
        for (List<String> cells : sheet.whatIf()) {
            flow.smallRow(cells == sheet.whatIf().get(0) ? bold : plain, cells, shares);
        }
    }

    private void reasons() throws IOException {
        flow.heading(bold, "Why", 6);
        for (String reason : sheet.reasons()) {
            flow.paragraph(plain, 7.5, 0, reason);
        }
    }
}
