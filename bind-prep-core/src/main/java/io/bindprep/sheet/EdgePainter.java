package io.bindprep.sheet;

import io.bindprep.binding.Hole;
import io.bindprep.binding.Plan;
import io.bindprep.paint.Ink;
import io.bindprep.paint.Type;
import io.bindprep.unit.Length;
import io.bindprep.unit.LengthText;
import java.io.IOException;
import java.util.List;

/**
 * Draws the bound edge with its holes at true size, in as many pieces side by side as the sheet's width asks for.
 *
 * <p>The bound edge is the upper line of a piece, the paper lies below it, the side guide stands at the left of the
 * first: a punched sheet is laid on it, holes on holes.
 */
final class EdgePainter {
    /** Of one piece: numbers above, paper, numbers below. */
    private static final double ABOVE = 9;

    private static final double PAPER = 16;
    private static final double BELOW = 8;
    private static final double GUIDE = 16;
    private static final double SMALL = 6.5;

    private final EdgeDrawing drawing;
    private final Plan plan;
    private final double room;

    EdgePainter(EdgeDrawing drawing, double roomMm) {
        this.drawing = drawing;
        this.plan = drawing.plan();
        this.room = roomMm;
    }

    private double length() {
        return plan.row().length().mm();
    }

    int pieces() {
        return (int) Math.max(1, Math.ceil(length() / (room - GUIDE)));
    }

    double pieceHeight() {
        return ABOVE + Math.max(PAPER, plan.clearMargin().mm() + 5) + BELOW;
    }

    private double paper() {
        return pieceHeight() - ABOVE - BELOW;
    }

    /** Draws one piece with its upper left corner there. */
    void paint(Ink ink, Type plain, Type bold, int piece, double x, double y) throws IOException {
        double each = length() / pieces();
        double from = piece * each;
        double to = from + each;
        double left = x + GUIDE;
        double edge = y + ABOVE;
        ink.grey(0);
        outline(ink, left, edge, each, piece);
        if (piece == 0) {
            guide(ink, bold, x, left, edge);
        } else {
            ink.right(plain, SMALL, left - 2, edge + 4, LengthText.mm(from));
        }
        zones(ink, plain, piece, left, edge, each);
        for (Hole hole : plan.row().holes()) {
            double at = hole.axis().mm();
            // a hole on the break is drawn in both pieces, cut by neither
            double half = plan.holeAlong().mm() / 2;
            if (at >= from - half && at < to + half) {
                hole(ink, plain, hole, left + at - from, edge);
            }
        }
        pulled(ink, bold, from, to, left, edge);
        webs(ink, plain, piece, left, edge, from, to);
    }

    private void outline(Ink ink, double left, double edge, double each, int piece) throws IOException {
        ink.width(0.5);
        ink.line(left, edge, left + each, edge);
        ink.width(0.25);
        end(ink, left, edge, piece == 0);
        end(ink, left + each, edge, piece == pieces() - 1);
    }

    private void end(Ink ink, double at, double edge, boolean sheetEnd) throws IOException {
        if (sheetEnd) {
            ink.line(at, edge, at, edge + paper());
            return;
        }
        // a broken edge is drawn as a zigzag, as in engineering drawings (ISO 128)
        double third = paper() / 3;
        ink.line(at, edge, at, edge + third);
        ink.line(at, edge + third, at + 1.2, edge + third * 1.25);
        ink.line(at + 1.2, edge + third * 1.25, at - 1.2, edge + third * 1.75);
        ink.line(at - 1.2, edge + third * 1.75, at, edge + third * 2);
        ink.line(at, edge + third * 2, at, edge + paper());
    }

    private void guide(Ink ink, Type bold, double x, double left, double edge) throws IOException {
        ink.box(left - 2.2, edge - 1, 1.4, paper() + 2, true);
        ink.text(bold, SMALL, x, edge + 3.5, "side");
        ink.text(bold, SMALL, x, edge + 6.2, "guide,");
        ink.text(bold, SMALL, x, edge + 8.9, drawing.start());
    }

    private void zones(Ink ink, Type plain, int piece, double left, double edge, double each) throws IOException {
        ink.width(0.15);
        ink.dash(2, 1);
        double zone = plan.punchedZone().mm();
        double margin = plan.clearMargin().mm();
        ink.line(left, edge + zone, left + each, edge + zone);
        ink.dash(0.4, 0.8);
        ink.line(left, edge + margin, left + each, edge + margin);
        ink.dash();
        if (piece == 0) {
            String note = "dashed: punched zone " + plan.punchedZone().inMm() + "; dotted: clear margin "
                    + plan.clearMargin().inMm();
            ink.right(plain, SMALL - 1, left + each - 3, edge + margin + 2.6, note);
        }
    }

    private void hole(Ink ink, Type plain, Hole hole, double at, double edge) throws IOException {
        double axis = edge + plan.edgeDistance().mm();
        double along = plan.holeAlong().mm();
        double across = plan.holeAcross().mm();
        ink.width(0.25);
        if (plan.round()) {
            ink.oval(at, axis, along, across);
        } else {
            ink.box(at - along / 2, axis - across / 2, along, across, false);
        }
        ink.width(0.1);
        ink.line(at, axis - 0.7, at, axis + 0.7);
        ink.line(at - 0.7, axis, at + 0.7, axis);
        boolean ends = hole.equals(first()) || hole.equals(last());
        if (ends || hole.pin() % 5 == 0) {
            ink.width(0.15);
            ink.line(at, edge - 0.8, at, edge - 2);
            ink.centred(plain, SMALL, at, edge - 2.6, "" + hole.pin());
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
    private void pulled(Ink ink, Type bold, double from, double to, double left, double edge) throws IOException {
        if (plan.row().holes().isEmpty()) {
            return;
        }
        for (int pin : plan.row().pulledPins()) {
            Length axis = axis(pin);
            double at = axis.mm();
            double half = plan.holeAlong().mm() / 2;
            boolean within = at >= from - half && at < to + half;
            if (!within || at + half < 0 || at - half > length()) {
                continue;
            }
            double x = left + at - from;
            double y = edge + plan.edgeDistance().mm();
            double across = plan.holeAcross().mm() / 2;
            ink.width(0.35);
            ink.line(x - half, y - across, x + half, y + across);
            ink.line(x - half, y + across, x + half, y - across);
            ink.centred(bold, SMALL, x, edge - 2.6, "" + pin);
        }
    }

    // pins stand a pitch apart from the first that cuts; a pattern of uneven spacings has no pin beyond its holes
    private Length axis(int pin) {
        return first().axis().plus(plan.pitch().times(pin - (long) first().pin()));
    }

    private void webs(Ink ink, Type plain, int piece, double left, double edge, double from, double to)
            throws IOException {
        if (plan.row().holes().isEmpty()) {
            return;
        }
        double base = edge + paper() + 3.6;
        double half = plan.holeAlong().mm() / 2;
        if (piece == 0) {
            measure(ink, plain, left, left + first().axis().mm(), base, first().axis(), true, edge);
        }
        if (piece == pieces() - 1) {
            double end = left + to - from;
            Length rest = plan.row().length().minus(last().axis());
            measure(ink, plain, end - rest.mm(), end, base, rest, false, edge);
            String note = "least paper at the ends " + plan.row().leastWeb().inMm() + "; edge to axis "
                    + plan.edgeDistance().inMm() + "; pitch " + plan.pitch().inMm() + "; edge "
                    + plan.row().length().inMm();
            ink.right(plain, SMALL, end - rest.mm() - half - 4, base + 2.2, plain.settable(note));
        }
    }

    private void measure(
            Ink ink, Type plain, double from, double to, double y, Length length, boolean textRight, double edge)
            throws IOException {
        ink.width(0.12);
        ink.line(from, edge + paper() + 0.5, from, y + 1);
        ink.line(to, edge + plan.edgeDistance().mm() + plan.holeAcross().mm(), to, y + 1);
        ink.line(from, y, to, y);
        if (textRight) {
            ink.text(plain, SMALL, to + 1, y + 0.8, length.inMm());
        } else {
            ink.right(plain, SMALL, from - 1, y + 0.8 - 2.6, length.inMm());
        }
    }
}
