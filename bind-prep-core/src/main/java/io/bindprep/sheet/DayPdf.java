package io.bindprep.sheet;

import io.bindprep.paint.PaintedPdf;
import io.bindprep.paint.Type;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** Writes a day as a PDF: the list first, then the sheet of each job; the same day gives the same bytes. */
public final class DayPdf {
    private static final double[] SUPPLIES = {0.33, 0.27, 0.13, 0.09, 0.18};
    private static final double[] QUOTE = {0.4, 0.2, 0.2, 0.2};

    private final DaySheet day;
    private final Flow flow;
    private final Type plain;
    private final Type bold;

    private DayPdf(DaySheet day, Flow flow, Type plain, Type bold) {
        this.day = day;
        this.flow = flow;
        this.plain = plain;
        this.bold = bold;
    }

    /**
     * Writes the day; the stream stays open.
     *
     * @throws IOException where the stream cannot be written
     */
    public static void write(DaySheet day, SheetPaper paper, OutputStream out) throws IOException {
        try (PaintedPdf document = new PaintedPdf()) {
            DayPdf pdf = new DayPdf(day, new Flow(document, paper), document.plain(), document.bold());
            pdf.list();
            pdf.flow.finish(document.plain(), day.title() + " · the sheet of each job follows");
            for (JobSheet sheet : day.sheets()) {
                SheetPdf.paint(sheet, document, paper);
            }
            document.save(day.title(), out);
        }
    }

    private void list() throws IOException {
        flow.paragraph(bold, 17, 0, day.title());
        flow.down(2);
        for (String line : day.summary()) {
            flow.paragraph(plain, 10, 0, line);
        }
        flow.down(1);
        flow.paragraph(plain, 8.2, 0, "! " + day.safety());
        if (!day.heldBack().isEmpty()) {
            flow.heading(bold, "Held back: do not punch", 8);
            for (String job : day.heldBack()) {
                flow.paragraph(bold, 10, 0, job);
            }
        }
        if (!day.jobs().isEmpty()) {
            flow.heading(bold, "In this order: tick each off", 20);
            int number = 1;
            for (DaySheet.Line job : day.jobs()) {
                job(number++, job);
            }
        }
        table("Supplies for the list", day.supplies(), SUPPLIES);
        table("Time and cost", day.quote(), QUOTE);
        for (String note : day.quoteNotes()) {
            flow.paragraph(plain, 8, 0, note);
        }
    }

    private void job(int number, DaySheet.Line job) throws IOException {
        double step = 11 * 0.42;
        List<String> name = bold.lines(number + "  " + job.name(), 11, flow.room() - 8);
        flow.need(step * name.size() + 8 + 4.2 * job.settings().size());
        flow.ink().width(0.3);
        flow.ink().box(flow.left(), flow.y() + 1.2, 3.6, 3.6, false);
        flow.paragraph(bold, 11, 6, String.join(" ", name));
        flow.paragraph(plain, 8.5, 6, job.work() + ". " + job.verdict());
        for (String setting : job.settings()) {
            flow.paragraph(plain, 10, 6, setting);
        }
        flow.down(1.5);
        flow.ink().width(0.1);
        flow.ink().line(flow.left(), flow.y(), flow.left() + flow.room(), flow.y());
    }

    private void table(String heading, List<List<String>> rows, double[] shares) throws IOException {
        if (rows.size() < 2) {
            return;
        }
        flow.heading(bold, heading, Math.min(8, rows.size()) * 5.0 + 2);
        for (List<String> cells : rows) {
            flow.row(cells == rows.get(0) || DaySheet.total(cells) ? bold : plain, cells, shares);
        }
    }
}
