package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.paint.PaintedPdf;
import io.bindprep.paint.Type;
import io.bindprep.report.words.JobNumbers;
import io.bindprep.report.words.Sentences;
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
 * be printed at full size, which a bar of 100 mm shows.
 */
public final class SheetPdf {
    /** Height of a tile with one line of notes. */
    private static final double TILE = 18.4;

    private static final double NOTE = 6.8;
    private static final double NOTE_STEP = 2.8;
    private static final int MOST_TILES = 4;
    private static final double LARGE = 26;
    private static final double BOX = 5.2;
    private static final double STEP_INDENT = 32;

    /** Boxes of one lift on a line, beside its pages. */
    private static final int MOST_BOXES = 16;

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
        pdf.flow.finish(plain, sheet.title() + " · job " + sheet.jobId() + " · " + digest);
    }

    private void paint() throws IOException {
        new TitleBlock(sheet, plain, bold).paint(flow);
        verdict();
        for (int part = 0; part < sheet.parts().size(); part++) {
            if (part > 0) {
                flow.nextPage();
                flow.paragraph(bold, 11, 0, sheet.title());
            }
            settings(sheet.parts().get(part));
            edge(sheet.parts().get(part));
            lifts(part + 1);
        }
        steps("At the punch, in this order", sheet.atThePunch());
        if (!cautions()) {
            flow.nextPage();
        }
        steps("Before the punch", sheet.before());
        materials();
        faults();
        numbers();
        reasons();
    }

    private void verdict() throws IOException {
        String word = sheet.answer().toUpperCase(Locale.ROOT);
        List<String> lines = plain.lines(sheet.verdict(), 9, flow.room() - 8);
        double height = 11 + lines.size() * 4.2;
        flow.need(height);
        Ink ink = flow.ink();
        ink.width(0.7);
        ink.box(flow.left(), flow.y(), flow.room(), height, !sheet.good());
        ink.grey(sheet.good() ? 0 : 1);
        ink.text(bold, 22, flow.left() + 4, flow.y() + 8.2, word);
        double at = flow.y() + 12.8;
        for (String line : lines) {
            ink.text(plain, 9, flow.left() + 4, at, line);
            at += 4.2;
        }
        ink.grey(0);
        flow.down(height + 1.5);
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
        ink.line(flow.left(), y, flow.left() + 100, y);
        ink.line(flow.left(), y - 1.5, flow.left(), y + 1.5);
        ink.line(flow.left() + 100, y - 1.5, flow.left() + 100, y + 1.5);
        ink.text(
                plain,
                7,
                flow.left() + 103,
                y + 1,
                "This bar is 100 mm long where the sheet was printed at full size.");
        flow.down(5);
    }

    /** A box for each lift of each copy; for more copies than fit a line, a tally. */
    private void lifts(int volume) throws IOException {
        flow.heading(
                bold,
                (sheet.copies() <= MOST_BOXES ? "Lifts, a box for every copy · " : "Lifts: tick each off · ")
                        + sheet.strokes() + (sheet.strokes() == 1 ? " stroke" : " strokes")
                        + " in all",
                6);
        double step = 5.6;
        List<JobSheet.LiftLine> lifts =
                sheet.lifts().stream().filter(l -> l.volume() == volume).toList();
        boolean boxes = sheet.copies() <= MOST_BOXES;
        double width = boxes && sheet.copies() > 3 ? flow.room() : flow.room() / 2;
        int across = width < flow.room() ? 2 : 1;
        for (int i = 0; i < lifts.size(); i += across) {
            flow.need(step);
            for (int side = 0; side < across && i + side < lifts.size(); side++) {
                lift(i + side + 1, lifts.get(i + side), flow.left() + side * width, width, boxes ? sheet.copies() : 1);
            }
            flow.down(step);
        }
        if (!boxes) {
            flow.need(7);
            String tally = "Tally of " + sheet.copies() + " copies punched:";
            flow.ink().text(plain, 9, flow.left(), flow.y() + 4.6, tally);
            flow.ink().width(0.15);
            flow.ink().line(flow.left() + 50, flow.y() + 5, flow.left() + flow.room(), flow.y() + 5);
            flow.down(7);
        }
    }

    private void lift(int number, JobSheet.LiftLine lift, double x, double width, int boxes) throws IOException {
        Ink ink = flow.ink();
        ink.width(0.3);
        double room = width - boxes * BOX - 4;
        String text = "Lift " + number + ": " + lift.text();
        ink.text(plain, 9, x, flow.y() + 4.2, plain.lines(text, 9, room).get(0));
        for (int box = 0; box < boxes; box++) {
            ink.box(x + room + box * BOX, flow.y() + 1, 3.6, 3.6, false);
        }
    }

    private void materials() throws IOException {
        // a table of a few rows is kept whole, a longer one runs on
        flow.heading(bold, "Materials", Math.min(8, sheet.materials().size()) * 5 + 2);
        double[] shares = {0.24, 0.26, 0.1, 0.12, 0.08, 0.2};
        for (int row = 0; row < sheet.materials().size(); row++) {
            List<String> cells = sheet.materials().get(row);
            Type type = row == 0 ? bold : plain;
            int most = 1;
            for (int i = 0; i < cells.size(); i++) {
                most = Math.max(
                        most,
                        type.lines(cells.get(i), 8.5, flow.room() * shares[i] - 2)
                                .size());
            }
            flow.need(most * 4 + 1);
            double x = flow.left();
            for (int i = 0; i < cells.size(); i++) {
                double at = flow.y() + 3.6;
                for (String line : type.lines(cells.get(i), 8.5, flow.room() * shares[i] - 2)) {
                    flow.ink().text(type, 8.5, x, at, line);
                    at += 4;
                }
                x += flow.room() * shares[i];
            }
            flow.down(most * 4 + 1);
            flow.ink().width(0.1);
            flow.ink().line(flow.left(), flow.y(), flow.left() + flow.room(), flow.y());
        }
    }

    private void steps(String heading, List<Step> steps) throws IOException {
        if (steps.isEmpty()) {
            return;
        }
        flow.heading(bold, heading, 8);
        for (Step step : steps) {
            double height = 2;
            for (String instruction : Sentences.of(step)) {
                height += flow.height(plain, 9, STEP_INDENT, instruction);
            }
            flow.need(Math.max(5, height)); // no step breaks across pages
            Ink ink = flow.ink();
            ink.width(0.3);
            ink.box(flow.left(), flow.y() + 0.4, 3.4, 3.4, false);
            ink.text(bold, 9, flow.left() + 5.5, flow.y() + 3.1, JobSheet.name(step));
            for (String instruction : Sentences.of(step)) {
                flow.paragraph(plain, 9, STEP_INDENT, instruction);
            }
            flow.down(0.8);
        }
    }

    /** All in one paragraph, so that they stay on the operator's page; returns true if they began the next. */
    private boolean cautions() throws IOException {
        String all = sheet.cautions().stream().map(Sentences::of).collect(Collectors.joining("  ! "));
        flow.down(1);
        boolean next = flow.need(flow.height(plain, 7, 0, "! " + all));
        flow.paragraph(plain, 7, 0, "! " + all);
        return next;
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

    private void reasons() throws IOException {
        flow.heading(bold, "Why", 6);
        for (String reason : sheet.reasons()) {
            flow.paragraph(plain, 6.2, 0, reason + ".");
        }
    }
}
