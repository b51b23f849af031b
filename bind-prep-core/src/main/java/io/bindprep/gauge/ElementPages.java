package io.bindprep.gauge;

import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.Method;
import io.bindprep.paint.Ink;
import io.bindprep.unit.Length;
import io.bindprep.unit.LengthText;
import java.io.IOException;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Gauges to hold things against: every element of the method as a circle of its inner diameter, and a scale for a stack. */
final class ElementPages {
    private static final double APART = 5;
    private static final double LABEL = 8;
    private static final double LEAST_CELL = 30;
    private static final int LONGEST_SCALE = 120;

    private final TestSheet sheet;

    ElementPages(TestSheet sheet) {
        this.sheet = sheet;
    }

    void paint(Pages pages) throws IOException {
        Column column = pages.next();
        column.heading("Gauge");
        stack(column);
        if (sheet.elements().isEmpty()) {
            column.paragraph(
                    8, "No sizes of elements are known for " + sheet.pattern().id() + ".");
            return;
        }
        column.paragraph(
                8,
                "Elements of " + sheet.pattern().elements()
                        + " by their nominal inner diameter, and what each takes "
                        + (sheet.elements().get(0).sheets() != null
                                ? "by its published capacity"
                                : "with " + sheet.clearance().inMm() + " of clearance")
                        + ". Hold a closed element against its circle. Elements of"
                        + " one nominal size differ: where a stack is near the limit, try it.");
        column.down(2);
        double x = 0;
        double tallest = 0;
        for (Elements.Entry entry : sheet.elements()) {
            double size = entry.element().size().mm();
            double cell = Math.max(size + APART, LEAST_CELL);
            if (x > 0 && x + cell > column.width()) {
                column.down(tallest + LABEL + APART);
                x = 0;
                tallest = 0;
            }
            if (column.y() + Math.max(size, tallest) + LABEL > pages.foot()) {
                column = pages.next();
                x = 0;
                tallest = 0;
            }
            circle(column, entry, column.left() + x, cell);
            x += cell;
            tallest = Math.max(tallest, size);
        }
    }

    private void circle(Column column, Elements.Entry entry, double left, double cell) throws IOException {
        Ink ink = column.ink();
        Element element = entry.element();
        double size = element.size().mm();
        double middle = left + cell / 2;
        ink.width(0.1);
        ink.oval(middle, column.y() + LABEL + size / 2, size, size);
        ink.centred(column.bold(), 7.5, middle, column.y() + 2.8, column.bold().settable(element.name()));
        String mm = element.size().inMm();
        String words = Stream.of(element.name().equals(mm) ? "" : mm, takes(entry))
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining(", "));
        ink.centred(column.plain(), 6, middle, column.y() + 5.6, words);
    }

    private String takes(Elements.Entry entry) {
        Integer sheets = entry.sheets();
        if (sheets != null) {
            return "takes " + Elements.bond(sheets).inMm();
        }
        Length most = entry.element().size().minus(sheet.clearance());
        // what a coil takes goes by the depth of the holes too
        return sheet.pattern().method() == Method.COIL || most.compareTo(Length.ZERO) <= 0
                ? ""
                : "takes " + most.inMm();
    }

    /** Millimetres above the line, sixteenths of an inch below it. */
    private void stack(Column column) throws IOException {
        column.paragraph(
                8,
                "Thickness of a stack, mm and inches: jog it, stand it on its edge with its back on 0, press it no harder than"
                        + " the element will, read at its front.");
        Ink ink = column.ink();
        double y = column.y() + 8;
        int longest = (int) Math.min(LONGEST_SCALE, column.width() - 10);
        ink.width(0.3);
        ink.line(column.left(), y - 6, column.left(), y + 6);
        ink.width(0.1);
        ink.line(column.left(), y, column.left() + longest, y);
        for (int mm = 1; mm <= longest; mm++) {
            double tick = mm % 10 == 0 ? 4 : mm % 5 == 0 ? 3 : 2;
            ink.line(column.left() + mm, y, column.left() + mm, y - tick);
            if (mm % 10 == 0) {
                ink.centred(column.plain(), 6, column.left() + mm, y - 4.8, "" + mm);
            }
        }
        for (int part = 1; part * 25.4 / 16 <= longest; part++) {
            double at = column.left() + part * 25.4 / 16;
            double tick = part % 16 == 0 ? 4 : part % 8 == 0 ? 3.2 : part % 4 == 0 ? 2.6 : part % 2 == 0 ? 2 : 1.4;
            ink.line(at, y, at, y + tick);
            if (part % 4 == 0) {
                ink.centred(
                        column.plain(),
                        6,
                        at,
                        y + 6.4,
                        LengthText.inches(Length.ofInch(part, 16)).replace(" in", ""));
            }
        }
        column.to(y + 11);
    }
}
