package io.bindprep.gauge;

import io.bindprep.catalogue.DepthSetting;
import io.bindprep.paint.Ink;
import io.bindprep.paint.PaintedPdf;
import io.bindprep.paint.Type;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Writes a test sheet as a PDF in black, white and true size: a page to punch for each depth setting, one to read holes
 * on, and gauges of the elements. Every page is as large as the sheet, its binding edge at the top and the end at the side
 * guide at the left; the same sheet gives the same bytes.
 */
public final class TestSheetPdf {
    static final double MARGIN = 12;

    /** The bar's line above the foot of the page. */
    private static final double BAR = 14;

    private static final String STEPS = "How to punch and read the test sheets";

    private final TestSheet sheet;
    private final PaintedPdf document;
    private final Type plain;

    private TestSheetPdf(TestSheet sheet, PaintedPdf document) {
        this.sheet = sheet;
        this.document = document;
        this.plain = document.plain();
    }

    /**
     * Writes the sheet; the stream stays open.
     *
     * @throws IOException where the stream cannot be written
     */
    public static void write(TestSheet sheet, OutputStream out) throws IOException {
        try (PaintedPdf document = new PaintedPdf()) {
            new TestSheetPdf(sheet, document).paint();
            document.save("Test sheet: " + sheet.punch().id(), out);
        }
    }

    private void paint() throws IOException {
        Pages pages = new Pages() {
            @Override
            public Column next() throws IOException {
                return TestSheetPdf.this.next();
            }

            @Override
            public double foot() {
                return TestSheetPdf.this.foot();
            }
        };
        Steps steps = new Steps(sheet);
        boolean apart = false;
        for (DepthSetting setting : sheet.settings()) {
            Column column = next();
            new PunchPage(sheet, setting).paint(column);
            boolean fits = steps.fit(column, foot());
            if (fits) {
                steps.write(column, pages);
            } else {
                column.paragraph(8, "! " + Steps.CAUTION);
                column.paragraph(8, "Follow the page \"" + STEPS + "\".");
            }
            apart = apart || !fits;
        }
        if (apart) {
            Column column = next();
            column.heading(STEPS);
            steps.write(column, pages);
        }
        new ReadingPage(sheet).paint(next(), foot());
        new ElementPages(sheet).paint(pages);
        int count = document.pages();
        for (int number = 1; number <= count; number++) {
            foot(document.over(number), number, count);
        }
    }

    private Column next() throws IOException {
        Ink ink = document.page(sheet.edge().mm(), sheet.across().mm());
        return new Column(
                ink, plain, document.bold(), MARGIN, MARGIN, sheet.edge().mm() - 2 * MARGIN);
    }

    private double foot() {
        return sheet.across().mm() - BAR - 6;
    }

    private void foot(Ink ink, int number, int pages) throws IOException {
        double y = sheet.across().mm() - BAR;
        double room = sheet.edge().mm() - 2 * MARGIN;
        ink.width(0.2);
        // as long as the page lets it be: the longer the stretch that is measured, the surer
        Ruler ruler = sheet.ruler();
        double step = ruler.barMark();
        int marks = (int) (room / step);
        ink.line(MARGIN, y, MARGIN + marks * step, y);
        for (int mark = 0; mark <= marks; mark++) {
            double at = MARGIN + mark * step;
            ink.line(at, y - 1.5, at, y + 1.5);
            if (mark >= 2) {
                ink.right(plain, 6, at - 0.8, y - 0.7, ruler.figure(mark * step) + " " + ruler.unit);
            }
        }
        ink.text(
                plain,
                6,
                MARGIN,
                y + 4.4,
                "bar: measure it with a steel rule from 0 to " + ruler.figure(2 * step) + " " + ruler.unit
                        + (marks > 2 ? " or more" : ""));
        ink.right(
                plain,
                6,
                MARGIN + room,
                y + 4.4,
                plain.settable(sheet.punch().id() + " · " + sheet.pattern().id() + " · binding edge "
                        + sheet.measures().size(sheet.edge()) + " · page " + number + " of " + pages));
    }
}
