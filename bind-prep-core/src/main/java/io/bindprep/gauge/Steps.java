package io.bindprep.gauge;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Steps for the pages, with their cautions. */
final class Steps {
    private static final double[] SIZES = {10, 9, 8};
    static final String CAUTION =
            "Punch waste first. Keep hands out of the punch, and isolate a powered one before pins are changed. Local law,"
                    + " site rules and the machine's manual come before this page. Only trained people run the punch.";

    private static final double GAP = 1.2;

    private final List<String> texts = new ArrayList<>();

    Steps(TestSheet sheet) {
        List<String> pulled =
                sheet.row().pulledPins().stream().map(String::valueOf).toList();
        texts.add("! " + CAUTION);
        texts.add(
                "1. Print every page at full size, not fitted to the paper, on one side of the job's stock. Cut it to "
                        + sheet.measures().area(sheet.edge(), sheet.across()) + " where the paper is larger.");
        texts.add("2. "
                + (pulled.isEmpty()
                        ? "Pull no pin. "
                        : "Pull " + (pulled.size() == 1 ? "pin " : "pins ")
                                + pulled.stream().collect(Collectors.joining(", ")) + ", counted from the side guide. ")
                + (sheet.punch().firstPin() == null
                        ? "Set the side guide by its own scale, without any correction: first hole "
                                + sheet.measures().mark(sheet.first().centre()) + " from the end of the sheet. "
                        : "")
                + "Set the depth stop as the page says.");
        texts.add(
                "3. Punch one sheet by itself. Push its binding edge square against the back stop, and the end marked SIDE GUIDE"
                        + " against the guide. Print faces up if the guide is at the left of the punch, down if it is at the"
                        + " right. Holes in the right place take away every box.");
        texts.add(
                "4. Take readings 1 to 3 from the edges of the paper, with the reading page or a steel rule. On the reading page,"
                        + " lay the binding edge on line 0 and the hole over the columns. Slide the sheet along line 0 until a"
                        + " line meets the near side of the hole. "
                        + sheet.ruler().reading()
                        + " Do the same for the far side. For reading 3 lay the end SIDE GUIDE on line 0.");
        texts.add(
                "5. Take reading 4 on the scale under the row: the left side of the first hole (4a) and of the last hole (4b). Or measure the length between the two with a steel rule.");
        texts.add(
                "6. Measure the bar with a steel rule. Give the readings to calibration as edge-first (1), edge-last (2),"
                        + " end-first (3), row (4) and bar. Leave the bar out only if all four were measured with a steel rule.");
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
