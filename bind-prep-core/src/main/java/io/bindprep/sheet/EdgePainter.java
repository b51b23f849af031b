package io.bindprep.sheet;

import io.bindprep.binding.Hole;
import io.bindprep.binding.Plan;
import io.bindprep.unit.Length;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;

/**
 * Draws the binding edge with its holes at true size, in as many pieces side by side as the sheet's width asks for.
 *
 * <p>The binding edge is the upper line of a piece, the paper lies below it, the side guide stands at the left of the
 * first: a punched sheet is laid on it, holes on holes.
 */
final class EdgePainter {
    /** Of one piece: numbers above, paper, numbers below. */
    private static final double ABOVE = 8;

    private static final double PAPER = 13;
    private static final double BELOW = 6;
    private static final double GUIDE = 16;

    /** Holes of a row that are all numbered. */
    private static final int FEW = 8;

    static final double SMALL = 6.5;

    /** Paper between a hole and the line at which the edge breaks off. */
    private static final double CLEAR_OF_BREAK = 1.5;

    /** Room for a length in small print; a shorter line has it beside itself. */
    private static final double WORDS = 12;

    private final EdgeDrawing drawing;
    private final Plan plan;
    private final ThumbCutPainter cut;
    private final double room;

    EdgePainter(EdgeDrawing drawing, double roomMm) {
        this.drawing = drawing;
        this.plan = drawing.plan();
        this.cut = new ThumbCutPainter(drawing);
        this.room = roomMm;
    }

    private double length() {
        return plan.row().length().mm();
    }

    int pieces() {
        return (int) Math.max(1, Math.ceil(length() / (room - GUIDE)));
    }

    /**
     * The place where a piece begins: an even share of the edge, moved to the middle between two holes where it would
     * break a hole or a pulled pin and the longer piece still has room.
     */
    private double breakAt(int piece) {
        double even = length() * piece / pieces();
        if (piece == 0 || piece == pieces() || plan.row().holes().isEmpty()) {
            return even;
        }
        double spare = (room - GUIDE - length() / pieces()) / 2;
        double half = Math.min(
                plan.holeAlong().mm() / 2 + CLEAR_OF_BREAK, plan.pitch().mm() / 2);
        List<Double> centres = Stream.concat(
                        plan.row().holes().stream().map(Hole::centre),
                        plan.row().pulledPins().stream().map(this::centre))
                .map(Length::mm)
                .toList();
        double moved = even;
        for (double centre : centres) {
            if (Math.abs(centre - even) < half) {
                double next = centres.stream()
                        .filter(c -> c > centre)
                        .mapToDouble(c -> c)
                        .min()
                        .orElse(length());
                moved = Math.min((centre + next) / 2, centre + half);
            }
        }
        return moved - even <= spare ? moved : even;
    }

    double pieceHeight() {
        double deepest = Math.max(plan.bindingMargin().mm(), cut.isThere() ? cut.depth() + 2 : 0);
        return ABOVE + Math.max(PAPER, deepest + 2) + BELOW;
    }

    private double paper() {
        return pieceHeight() - ABOVE - BELOW;
    }

    /** Draws one piece with its upper left corner there. */
    void paint(Pen pen, int piece, double x, double y) throws IOException {
        double from = breakAt(piece);
        double to = breakAt(piece + 1);
        double left = x + GUIDE;
        double edge = y + ABOVE;
        outline(pen, left, edge, from, to, piece);
        cut.paint(pen, left, edge, from, to);
        if (piece == 0) {
            guide(pen, x, left, edge);
        } else {
            // "both" units stand below each other, or they would run off the sheet
            String[] place = drawing.measures().mark(from).split(" (?=\\()");
            for (int line = 0; line < place.length; line++) {
                pen.right(false, SMALL, left - 2, edge + 4 + line * 2.8, place[line]);
            }
        }
        zones(pen, left, edge, to - from);
        for (Hole hole : plan.row().holes()) {
            double at = hole.centre().mm();
            // a hole on the break is drawn in both pieces, cut by neither
            double half = plan.holeAlong().mm() / 2;
            if (at >= from - half && at < to + half) {
                hole(pen, hole, left + at - from, edge);
            }
        }
        pulled(pen, from, to, left, edge);
        webs(pen, piece, left, edge, from, to);
    }

    private void outline(Pen pen, double left, double edge, double from, double to, int piece) throws IOException {
        pen.width(0.5);
        double half = cut.half();
        double middle = length() / 2;
        // no edge is drawn where the thumb cut takes it away
        stretch(pen, left - from, edge, from, Math.min(to, middle - half));
        stretch(pen, left - from, edge, Math.max(from, middle + half), to);
        pen.width(0.25);
        end(pen, left, edge, from, piece == 0);
        end(pen, left + to - from, edge, to, piece == pieces() - 1);
    }

    private static void stretch(Pen pen, double zero, double edge, double from, double to) throws IOException {
        if (to > from) {
            pen.line(zero + from, edge, zero + to, edge);
        }
    }

    private void end(Pen pen, double at, double edge, double place, boolean sheetEnd) throws IOException {
        double bottom = edge + paper();
        if (sheetEnd) {
            pen.line(at, edge, at, bottom);
            return;
        }
        // a broken edge is drawn as a zigzag, as in engineering drawings (ISO 128)
        double top = edge + cut.depthAt(place);
        double third = (bottom - top) / 3;
        pen.line(at, top, at, top + third);
        pen.line(at, top + third, at + 1.2, top + third * 1.25);
        pen.line(at + 1.2, top + third * 1.25, at - 1.2, top + third * 1.75);
        pen.line(at - 1.2, top + third * 1.75, at, top + third * 2);
        pen.line(at, top + third * 2, at, bottom);
    }

    private void guide(Pen pen, double x, double left, double edge) throws IOException {
        pen.box(left - 2.2, edge - 1, 1.4, paper() + 2, true);
        pen.text(true, SMALL, x, edge + 3.5, "side");
        pen.text(true, SMALL, x, edge + 6.2, "guide,");
        pen.text(true, SMALL, x, edge + 8.9, drawing.start());
    }

    private void zones(Pen pen, double left, double edge, double each) throws IOException {
        pen.width(0.15);
        pen.dash(2, 1);
        double zone = plan.holeZone().mm();
        double margin = plan.bindingMargin().mm();
        pen.line(left, edge + zone, left + each, edge + zone);
        pen.dash(0.4, 0.8);
        pen.line(left, edge + margin, left + each, edge + margin);
        pen.dash();
    }

    private void hole(Pen pen, Hole hole, double at, double edge) throws IOException {
        double centre = edge + plan.edgeDistance().mm();
        double along = plan.holeAlong().mm();
        double across = plan.holeAcross().mm();
        pen.width(0.25);
        if (plan.round()) {
            pen.oval(at, centre, along, across);
        } else {
            pen.box(at - along / 2, centre - across / 2, along, across, false);
        }
        pen.width(0.1);
        pen.line(at, centre - 0.7, at, centre + 0.7);
        pen.line(at - 0.7, centre, at + 0.7, centre);
        boolean ends = hole.equals(first()) || hole.equals(last());
        if (ends || hole.pin() % 5 == 0 || plan.row().holes().size() <= FEW) {
            pen.width(0.15);
            pen.line(at, edge - 0.8, at, edge - 2);
            pen.centred(false, SMALL, at, edge - 2.6, "" + hole.pin());
        }
    }

    private Hole first() {
        return plan.row().holes().get(0);
    }

    private Hole last() {
        List<Hole> holes = plan.row().holes();
        return holes.get(holes.size() - 1);
    }

    /** Pins to pull where they would cut: crossed, at their place; those off the sheet beside its end. */
    private void pulled(Pen pen, double from, double to, double left, double edge) throws IOException {
        if (plan.row().holes().isEmpty()) {
            return;
        }
        for (int pin : plan.row().pulledPins()) {
            Length centre = centre(pin);
            double at = centre.mm();
            double half = plan.holeAlong().mm() / 2;
            boolean within = at >= from - half && at < to + half;
            if (!within || at + half < 0 || at - half > length()) {
                continue;
            }
            double x = left + at - from;
            double y = edge + plan.edgeDistance().mm();
            double across = plan.holeAcross().mm() / 2;
            pen.width(0.35);
            pen.line(x - half, y - across, x + half, y + across);
            pen.line(x - half, y + across, x + half, y - across);
            pen.centred(true, SMALL, x, edge - 2.6, "" + pin);
        }
    }

    // pins stand a pitch apart from the first that cuts; a pattern of uneven spacings has no pin beyond its holes
    private Length centre(int pin) {
        return first().centre().plus(plan.pitch().times(pin - (long) first().pin()));
    }

    /** Lengths from either end to the nearest hole's centre; where that lies in another piece the line breaks off. */
    private void webs(Pen pen, int piece, double left, double edge, double from, double to) throws IOException {
        if (plan.row().holes().isEmpty()) {
            return;
        }
        double base = edge + paper() + 3.6;
        double end = left + to - from;
        if (piece == 0) {
            double centre = left + first().centre().mm();
            pen.width(0.12);
            tick(pen, left, edge, base);
            pen.line(left, base, Math.min(centre, end), base);
            if (centre <= end) {
                tick(pen, centre, edge, base);
            }
            double at = first().centre().mm() < WORDS ? centre : left;
            pen.text(false, SMALL, at + 1, base - 0.8, drawing.measures().set(first().centre()));
        }
        if (piece == pieces() - 1) {
            Length rest = plan.row().length().minus(last().centre());
            double centre = end - rest.mm();
            pen.width(0.12);
            tick(pen, end, edge, base);
            pen.line(Math.max(centre, left), base, end, base);
            if (centre >= left) {
                tick(pen, centre, edge, base);
            }
            pen.right(
                    false,
                    SMALL,
                    (rest.mm() < WORDS ? centre : end) - 1,
                    base - 0.8,
                    drawing.measures().set(rest));
        }
    }

    private void tick(Pen pen, double at, double edge, double y) throws IOException {
        pen.line(at, edge + paper() - 2, at, y + 1);
    }
}
