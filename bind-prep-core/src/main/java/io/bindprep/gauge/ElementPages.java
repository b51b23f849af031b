package io.bindprep.gauge;

import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.Method;
import io.bindprep.paint.Ink;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Gauges to hold things against: every element of the method as a circle of its inner diameter, and a scale for a stack. */
final class ElementPages {
    private static final double APART = 5;
    private static final double NAME = 5.5;
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
        column.paragraph(
                8,
                "Elements by their nominal inner diameter: hold a closed one against its circle. Elements of one nominal size"
                        + " differ. Where a stack is near the limit, try one.");
        Map<String, List<Elements.Entry>> groups = new LinkedHashMap<>();
        sheet.elements()
                .forEach(e -> groups.computeIfAbsent(e.group(), g -> new ArrayList<>())
                        .add(e));
        if (groups.isEmpty()) {
            column.paragraph(8, "No sizes are known for " + sheet.pattern().id() + ".");
        }
        for (Map.Entry<String, List<Elements.Entry>> group : groups.entrySet()) {
            column = group(column, pages, group.getKey(), group.getValue());
        }
    }

    /** The circles of one group, in rows; returns the column below them. */
    private Column group(Column from, Pages pages, String name, List<Elements.Entry> entries) throws IOException {
        Column column = from;
        double most = Math.min(column.width(), pages.foot() - TestSheetPdf.MARGIN - NAME - LABEL);
        double x = 0;
        double tallest = 0;
        column.down(APART);
        boolean named = false;
        List<String> larger = new ArrayList<>();
        for (Elements.Entry entry : entries) {
            double size = entry.element().size().mm();
            if (size > most) {
                larger.add(entry.element().name());
                continue;
            }
            double cell = Math.max(size + APART, LEAST_CELL);
            if (x > 0 && x + cell > column.width()) {
                column.down(tallest + LABEL + APART);
                x = 0;
                tallest = 0;
            }
            if (column.y() + Math.max(size, tallest) + LABEL + (named ? 0 : NAME) > pages.foot()) {
                column = pages.next();
                x = 0;
                tallest = 0;
            }
            if (!named) {
                column.fitted(column.bold(), 9, name + capacity(entry));
                column.down(1.5);
                named = true;
            }
            circle(column, entry, column.left() + x, cell);
            x += cell;
            tallest = Math.max(tallest, size);
        }
        column.down(tallest + LABEL);
        if (!larger.isEmpty()) {
            column.paragraph(8, "Larger than this page: " + String.join(", ", larger) + ".");
        }
        return column;
    }

    private String capacity(Elements.Entry entry) {
        return entry.sheets() != null
                ? ", and what each takes by its published capacity"
                : coil()
                        ? ""
                        : ", and what each takes with " + sheet.measures().size(sheet.clearance()) + " of clearance";
    }

    // a coil's capacity goes by the depth of the holes too
    private boolean coil() {
        return sheet.pattern().method() == Method.COIL;
    }

    private void circle(Column column, Elements.Entry entry, double left, double cell) throws IOException {
        Ink ink = column.ink();
        Element element = entry.element();
        double size = element.size().mm();
        double middle = left + cell / 2;
        ink.width(0.1);
        ink.oval(middle, column.y() + LABEL + size / 2, size, size);
        ink.centred(column.bold(), 7.5, middle, column.y() + 2.8, column.bold().settable(element.name()));
        String mm = sheet.measures().size(element.size());
        String words = Stream.of(element.name().equals(mm) ? "" : mm, takes(entry))
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining(", "));
        ink.centred(column.plain(), 7, middle, column.y() + 5.6, words);
    }

    private String takes(Elements.Entry entry) {
        Integer sheets = entry.sheets();
        if (sheets != null) {
            return "takes " + sheet.measures().down(Elements.bond(sheets));
        }
        Length most = entry.element().size().minus(sheet.clearance());
        return coil() || most.compareTo(Length.ZERO) <= 0
                ? ""
                : "takes " + sheet.measures().down(most);
    }

    /** Millimetres above the line, sixteenths of an inch below it. */
    private void stack(Column column) throws IOException {
        column.paragraph(
                8,
                "Thickness of a stack, in mm and inches: jog it and stand it on its edge, its back on 0. Press it no harder than"
                        + " the element will. Read at its front.");
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
                ink.centred(column.plain(), 7, column.left() + mm, y - 4.8, "" + mm);
            }
        }
        for (int part = 1; part * 25.4 / 16 <= longest; part++) {
            double at = column.left() + part * 25.4 / 16;
            double tick = part % 16 == 0 ? 4 : part % 8 == 0 ? 3.2 : part % 4 == 0 ? 2.6 : part % 2 == 0 ? 2 : 1.4;
            ink.line(at, y, at, y + tick);
            if (part % 4 == 0) {
                ink.centred(
                        column.plain(),
                        6.5,
                        at,
                        y + 6.4,
                        LengthText.inches(Length.ofInch(part, 16)).replace(" in", ""));
            }
        }
        column.to(y + 11);
    }
}
