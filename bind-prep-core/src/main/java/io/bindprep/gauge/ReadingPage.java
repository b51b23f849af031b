package io.bindprep.gauge;

import io.bindprep.catalogue.DepthSetting;
import io.bindprep.paint.Ink;
import java.io.IOException;
import java.util.List;
import java.util.TreeSet;

/**
 * The page on which a punched sheet is laid to read how far a hole lies from an edge of the paper, wherever print sits on
 * either: the paper's edge on line 0, the hole over one of ten columns whose lines stand a tenth of a millimetre, or five
 * thousandths of an inch, further each. Seen through the hole, the line that meets its side gives the tenth, as on a vernier.
 */
final class ReadingPage {
    private static final double FINE = 0.08;
    private static final double DIGIT = 8;

    /** Room for a figure at the left of a column. */
    private static final double FIGURE = 5.4;

    private static final int COLUMNS = 10;
    private static final double LEFT = 16;

    /** Distance that a hole may lie off and still be read. */
    private static final double REACH = 3;

    private final TestSheet sheet;
    private final Ruler ruler;
    private final double each;

    ReadingPage(TestSheet sheet) {
        this.sheet = sheet;
        this.ruler = sheet.ruler();
        double hole = Math.max(
                sheet.pattern().holeAlong().mm(), sheet.pattern().holeAcross().mm());
        this.each = Math.min(hole + 4 + FIGURE, (sheet.edge().mm() - LEFT - 4) / COLUMNS);
    }

    void paint(Column column, double foot) throws IOException {
        column.heading("Reading page");
        column.paragraph(
                9,
                "Lay the edge of the punched sheet on line 0, the sheet below it and the hole over a column. Slide it along"
                        + " line 0 until a line meets the side of the hole. "
                        + (ruler == Ruler.MM
                                ? "Count whole millimetres at the lines, as on a rule: every fifth has its figure. Add the"
                                        + " tenth above the column."
                                : "Count 0.05 in at each line: every fourth has its figure. Add what stands above the"
                                        + " column."));
        double zero = column.y() + 7;
        List<DepthSetting> settings = sheet.settings();
        double halfAcross = sheet.pattern().holeAcross().mm() / 2;
        double halfAlong = sheet.pattern().holeAlong().mm() / 2;
        TreeSet<Integer> numbers = new TreeSet<>();
        add(
                numbers,
                settings.get(0).centre().mm() - halfAcross,
                settings.get(settings.size() - 1).centre().mm() + halfAcross);
        double end = sheet.first().centre().mm();
        boolean both = zero + end + halfAlong + REACH + 2 <= foot;
        if (both) {
            add(numbers, end - halfAlong, end + halfAlong);
        }
        Ink ink = column.ink();
        ink.width(0.3);
        ink.line(4, zero, sheet.edge().mm() - 4, zero);
        ink.text(column.bold(), DIGIT, 4, zero - 1, "line 0");
        for (int tenth = 0; tenth < COLUMNS; tenth++) {
            lines(column, tenth, zero, numbers);
        }
        if (!both) {
            column.to(zero + numbers.last() * ruler.readingLine + 3);
            column.paragraph(
                    9, "The first hole lies too far from the end for this page: take reading 3 with a steel rule.");
        }
    }

    private void add(TreeSet<Integer> numbers, double near, double far) {
        int low = Math.max(1, (int) Math.floor((near - REACH) / ruler.readingLine));
        for (int number = low; number <= Math.ceil((far + REACH) / ruler.readingLine); number++) {
            numbers.add(number);
        }
    }

    private void lines(Column column, int tenth, double zero, TreeSet<Integer> numbers) throws IOException {
        Ink ink = column.ink();
        double left = LEFT + tenth * each;
        double right = left + each - 1;
        ink.centred(column.bold(), DIGIT, (left + FIGURE + right) / 2, zero - 1, ruler.adds(tenth));
        ink.width(FINE);
        for (int number : numbers) {
            double y = zero + number * ruler.readingLine + tenth * ruler.column;
            boolean figure = number % ruler.readingFigure == 0;
            ink.line(left + FIGURE - (figure ? 1 : 0), y, right, y);
            if (figure) {
                // a digit is 0.71 em high: its middle on the line
                double baseline = y + DIGIT * 0.71 / 2 * 25.4 / 72;
                ink.right(
                        column.plain(), DIGIT, left + FIGURE - 1.4, baseline, ruler.figure(number * ruler.readingLine));
            }
        }
    }
}
