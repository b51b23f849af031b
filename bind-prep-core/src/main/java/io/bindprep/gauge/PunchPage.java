package io.bindprep.gauge;

import io.bindprep.binding.Hole;
import io.bindprep.catalogue.DepthSetting;
import io.bindprep.paint.Ink;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Units;
import java.io.IOException;
import java.util.List;

/**
 * The page that is punched at one setting: a box where each hole should fall, a scale under the row, one from the edge at
 * both ends of it, and fields for the readings. The upper edge of the page is the binding edge, the left one the end at the
 * side guide.
 */
final class PunchPage {
    private static final double FINE = 0.1;

    /** Under the holes, above the scale. */
    private static final double GAP = 0.8;

    /** Beside a hole, before a scale from the edge. */
    private static final double BESIDE = 1.2;

    private static final double TICK = 1.3;
    private static final double TICK_5 = 2;
    private static final double TICK_10 = 3;
    private static final double BOX = 20;
    private static final double FIELD = 5.2;
    private static final String BAR = "bar: what a steel rule shows for it, and how much of it was measured";
    private static final List<String> FIELDS = List.of(
            "1  edge-first: binding edge to the FIRST hole, its near and far side",
            "2  edge-last: binding edge to the LAST hole, its near and far side",
            "3  end-first: this end of the paper to the FIRST hole, its near and far side",
            "4  row: left side of the first hole (4a) and of the last (4b), on the scale above",
            BAR);

    private final TestSheet sheet;
    private final DepthSetting setting;
    /** Half the width of a figure. */
    private static final double FIGURE = 2.5;

    private final double centre;
    private final double halfAlong;
    private final double halfAcross;
    private final double length;

    PunchPage(TestSheet sheet, DepthSetting setting) {
        this.sheet = sheet;
        this.setting = setting;
        this.centre = setting.centre().mm();
        this.halfAlong = sheet.pattern().holeAlong().mm() / 2;
        this.halfAcross = sheet.pattern().holeAcross().mm() / 2;
        this.length = sheet.edge().mm();
    }

    void paint(Column column) throws IOException {
        targets(column);
        double scale = centre + halfAcross + GAP;
        double[] left = endScale(column, sheet.first(), true);
        double[] right = endScale(column, sheet.last(), false);
        edgeScale(column, scale, left, right);
        column.to(scale + 13);
        header(column);
        fields(column);
    }

    private void targets(Column column) throws IOException {
        Ink ink = column.ink();
        ink.width(FINE);
        for (Hole hole : sheet.row().holes()) {
            double at = hole.centre().mm();
            box(ink, at);
            ink.line(at, centre - 0.8, at, centre + 0.8);
            ink.line(at - 0.8, centre, at + 0.8, centre);
        }
        for (int pin : sheet.row().pulledPins()) {
            Length off = sheet.pattern()
                    .span(pin)
                    .minus(sheet.pattern().span(sheet.first().pin()));
            double at = sheet.first().centre().plus(off).mm();
            if (at + halfAlong > 0 && at - halfAlong < length) {
                ink.line(at - halfAlong, centre - halfAcross, at + halfAlong, centre + halfAcross);
                ink.line(at - halfAlong, centre + halfAcross, at + halfAlong, centre - halfAcross);
            }
        }
    }

    private void box(Ink ink, double at) throws IOException {
        if (sheet.pattern().round()) {
            ink.oval(at, centre, 2 * halfAlong, 2 * halfAcross);
        } else {
            ink.box(at - halfAlong, centre - halfAcross, 2 * halfAlong, 2 * halfAcross, false);
        }
    }

    /**
     * A scale of distances from the binding edge beside the first or last hole: outside it where there is room, else between
     * it and its neighbour.
     *
     * @return from where to where it lies along the edge; empty where there is no room for one
     */
    private double[] endScale(Column column, Hole hole, boolean first) throws IOException {
        double at = hole.centre().mm();
        double outside = first ? at - halfAlong : length - at - halfAlong;
        double between = sheet.pattern().pitch().mm() - 2 * halfAlong;
        boolean out = outside >= BESIDE + TICK_10;
        if (!out && between < BESIDE + TICK_10) {
            return new double[0];
        }
        // away from the hole, towards the left or the right
        int away = first == out ? -1 : 1;
        double from = at + away * (halfAlong + BESIDE);
        Ink ink = column.ink();
        ink.width(FINE);
        Ruler ruler = sheet.ruler();
        int every = ruler == Ruler.MM ? ruler.longer : ruler.line;
        int last = (int) Math.ceil((centre + halfAcross + 3) / ruler.fine);
        for (int i = 0; i <= last; i++) {
            double y = i * ruler.fine;
            double tick = i % every == 0 ? TICK_10 : i % ruler.line == 0 ? TICK_5 : TICK;
            ink.line(from, y, from + away * tick, y);
            if (i % every == 0 && i > 0 && out && outside >= BESIDE + TICK_10 + 2) {
                String figure = ruler.figure(y).replaceFirst("^0", "");
                ink.centred(column.plain(), 6, from + away * (TICK_10 + 1), y + 0.6, figure);
            }
        }
        return new double[] {Math.min(from, from + away * TICK_10), Math.max(from, from + away * TICK_10)};
    }

    /** Distances from the end at the side guide, finer about the first and last hole. */
    private void edgeScale(Column column, double y, double[] skip, double[] skipToo) throws IOException {
        Ink ink = column.ink();
        ink.width(FINE);
        Ruler ruler = sheet.ruler();
        for (int i = 0; i * ruler.fine <= length; i++) {
            double at = i * ruler.fine;
            boolean whole = i % ruler.line == 0;
            if (within(at, skip) || within(at, skipToo) || (!whole && !near(at))) {
                continue;
            }
            double tick = !whole ? 0.8 : i % ruler.figure == 0 ? TICK_10 : i % ruler.longer == 0 ? TICK_5 : TICK;
            ink.line(at, y, at, y + tick);
            // a figure at the paper's end would be cut off
            if (i % ruler.figure == 0 && at > FIGURE && at < length - FIGURE) {
                ink.centred(column.plain(), 7, at, y + TICK_10 + 2.6, ruler.figure(at));
            }
        }
        pointer(column, sheet.first(), y, "4a");
        pointer(column, sheet.last(), y, "4b");
    }

    private static boolean within(double at, double[] stretch) {
        return stretch.length == 2 && at > stretch[0] - 0.2 && at < stretch[1] + 0.2;
    }

    private boolean near(double at) {
        double reach = halfAlong + 4;
        return Math.abs(at - sheet.first().centre().mm()) < reach
                || Math.abs(at - sheet.last().centre().mm()) < reach;
    }

    private void pointer(Column column, Hole hole, double y, String label) throws IOException {
        double at = hole.centre().mm() - halfAlong;
        column.ink().line(at, y + TICK_10 + 3.4, at, y + TICK_10 + 5.2);
        column.ink().centred(column.bold(), 7, at, y + TICK_10 + 7.8, label);
    }

    private void header(Column column) throws IOException {
        Ink ink = column.ink();
        double y = column.y();
        ink.box(column.left(), y - 0.5, 24, 4.2, true);
        ink.grey(1);
        ink.text(column.bold(), 7.5, column.left() + 1, y + 2.5, "< SIDE GUIDE");
        ink.grey(0);
        ink.text(
                column.plain(),
                7.5,
                column.left() + 26,
                y + 2.5,
                "this end to the guide, the upper edge to the back stop; hole 1 first, hole "
                        + sheet.row().holes().size() + " last");
        column.down(6);
        column.fitted(
                column.bold(),
                13,
                "Test sheet, depth \"" + setting.name() + "\": holes " + depth(setting.centre()) + " from the edge");
        column.paragraph(
                8,
                "Punch " + sheet.punch().id() + ", " + sheet.pattern().id() + ", "
                        + sheet.row().holes().size() + " holes ("
                        + sheet.measures()
                                .hole(
                                        sheet.pattern().round(),
                                        sheet.pattern().holeAlong(),
                                        sheet.pattern().holeAcross())
                        + "), the first "
                        + sheet.measures().mark(sheet.first().centre())
                        + " from the end, the last "
                        + sheet.measures().mark(sheet.last().centre())
                        + "; first to last " + sheet.measures().mark(sheet.span())
                        + (sheet.ruler() == Ruler.MM
                                ? ". Readings are in millimetres and tenths."
                                : ". Readings are in inches and decimals, such as 0.335."));
        column.down(1.5);
    }

    /** In both units on a metric sheet, as depth stops come in either; a sheet in inches names no millimetre. */
    private String depth(Length centre) {
        return sheet.ruler() == Ruler.MM
                ? new Measures(Units.BOTH).mark(centre)
                : sheet.measures().fine(centre);
    }

    private void fields(Column column) throws IOException {
        double room = column.width() - 2 * BOX - 14;
        double size = FIELDS.stream()
                .mapToDouble(label -> column.sizeFor(column.plain(), 8.5, label, room))
                .min()
                .orElseThrow();
        for (String label : FIELDS) {
            Ink ink = column.ink();
            double right = column.left() + column.width();
            double y = column.y();
            ink.width(0.2);
            ink.box(right - 2 * BOX - 12, y, BOX, FIELD, false);
            ink.box(right - BOX - 6, y, BOX, FIELD, false);
            ink.centred(column.plain(), 7.5, right - BOX - 9, y + 3.6, label.equals(BAR) ? "of" : "to");
            ink.right(column.plain(), 7.5, right, y + 3.6, sheet.ruler().unit);
            ink.text(column.plain(), size, column.left(), y + 3.6, label);
            column.down(FIELD + 0.8);
        }
        column.down(1.5);
    }
}
