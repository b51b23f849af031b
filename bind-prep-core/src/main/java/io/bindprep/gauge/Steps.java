package io.bindprep.gauge;

import io.bindprep.wording.LengthText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Steps for the pages, with their cautions. */
final class Steps {
    private static final double[] SIZES = {10, 9, 8};
    static final String CAUTION =
            "Punch waste first. Keep hands out of the punch, isolate a powered one before pins are changed. Local law,"
                    + " site rules and the machine's manual come before this page; only trained people run the punch.";

    private static final double GAP = 1.2;

    private final List<String> texts = new ArrayList<>();

    Steps(TestSheet sheet) {
        List<String> pulled =
                sheet.row().pulledPins().stream().map(String::valueOf).toList();
        texts.add("! " + CAUTION);
        texts.add("1. Print every page at full size, without fitting, on one side of the job's stock; cut it to "
                + LengthText.area(sheet.edge(), sheet.across()) + " where the paper is larger.");
        texts.add("2. "
                + (pulled.isEmpty()
                        ? "No pin needs pulling. "
                        : "Pull " + (pulled.size() == 1 ? "pin " : "pins ")
                                + pulled.stream().collect(Collectors.joining(", ")) + ", counted from the side guide. ")
                + (sheet.punch().firstPin() == null
                        ? "Set the side guide by its own scale so that the first hole would come to "
                                + sheet.first().centre().inMm() + " from the end of the sheet, without any correction. "
                        : "")
                + "Set the depth stop as the page says.");
        texts.add(
                "3. Punch one sheet by itself: binding edge square against the back stop, the end SIDE GUIDE against the guide,"
                        + " print up where the guide is at the left of the punch, down where it is at the right. A row that was"
                        + " punched true takes away every box.");
        texts.add(
                "4. Readings 1 to 3 are taken from the edges of the paper, so that it does not matter where the print sits on"
                        + " it: on the reading page, or with a steel rule. Lay the sheet on the reading page, its binding edge on line 0,"
                        + " the hole over the columns, and slide it along the line until a line meets the near side of the hole: the"
                        + " millimetres of the line, and the tenth at the column's head. The far side likewise. For 3 lay the end SIDE"
                        + " GUIDE on line 0.");
        texts.add(
                "5. Reading 4 is taken on the scale under the row: the left side of the first hole (4a) and the"
                        + " left side of the last hole (4b), tenths by eye. With a steel rule the length between the two will do.");
        texts.add(
                "6. Measure the bar with a steel rule. Calibration takes the readings as edge-first (1), edge-last (2), end-first"
                        + " (3), row (4) and bar; the bar is left out only where all four were measured with a steel rule.");
    }

    /** Returns true if all of it goes on what is left of the page. */
    boolean fit(Column column, double foot) {
        return end(column, SIZES[SIZES.length - 1]) <= foot;
    }

    private double end(Column column, double size) {
        return column.y()
                + texts.stream().mapToDouble(t -> column.height(size, t) + GAP).sum();
    }

    /** Writes it, as large as it fits, on further pages where it must be. */
    void write(Column first, Pages pages) throws IOException {
        Column column = first;
        double size = Arrays.stream(SIZES)
                .filter(s -> end(first, s) <= pages.foot())
                .findFirst()
                .orElse(SIZES[SIZES.length - 1]);
        for (String text : texts) {
            if (column.y() + column.height(size, text) > pages.foot()) {
                column = pages.next();
            }
            column.paragraph(size, text);
            column.down(GAP);
        }
    }
}
