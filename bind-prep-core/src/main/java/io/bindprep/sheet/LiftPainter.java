package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.paint.Type;
import java.io.IOException;
import java.util.List;

/** Sets the lifts of a copy, or of one volume of it, to be ticked off. */
final class LiftPainter {
    private static final double BOX = 5.2;

    /** Boxes of one lift on a line, beside its pages. */
    private static final int MOST_BOXES = 16;

    private final JobSheet sheet;
    private final Flow flow;
    private final Type plain;
    private final Type bold;

    LiftPainter(JobSheet sheet, Flow flow, Type plain, Type bold) {
        this.sheet = sheet;
        this.flow = flow;
        this.plain = plain;
        this.bold = bold;
    }

    /** A box for each lift of each copy; for more copies than fit a line, a tally. */
    void paint(int volume) throws IOException {
        flow.heading(
                bold,
                (sheet.copies() <= MOST_BOXES ? "Lifts, a box for every copy · " : "Lifts: tick each off · ")
                        + sheet.strokes() + (sheet.strokes() == 1 ? " stroke" : " strokes")
                        + " in all",
                6);
        double step = 5.3;
        List<JobSheet.LiftLine> lifts =
                sheet.lifts().stream().filter(l -> l.volume() == volume).toList();
        boolean boxes = sheet.copies() <= MOST_BOXES;
        double width = boxes && sheet.copies() > 3 ? flow.room() : flow.room() / 2;
        int across = width < flow.room() ? 2 : 1;
        for (int i = 0; i < lifts.size(); i += across) {
            flow.need(step);
            for (int side = 0; side < across && i + side < lifts.size(); side++) {
                lift(i + side + 1, lifts.get(i + side), flow.left() + side * width, width, boxes ? sheet.copies() : 1);
            }
            flow.down(step);
        }
        if (!boxes) {
            flow.need(6);
            String tally = "Tally of " + sheet.copies() + " copies punched:";
            flow.ink().text(plain, 9, flow.left(), flow.y() + 4.6, tally);
            flow.ink().width(0.15);
            flow.ink().line(flow.left() + 50, flow.y() + 5, flow.left() + flow.room(), flow.y() + 5);
            flow.down(6);
        }
    }

    private void lift(int number, JobSheet.LiftLine lift, double x, double width, int boxes) throws IOException {
        Ink ink = flow.ink();
        ink.width(0.3);
        double room = width - boxes * BOX - 4;
        String text = "Lift " + number + ": " + lift.text();
        ink.text(plain, 9, x, flow.y() + 4.2, plain.lines(text, 9, room).get(0));
        for (int box = 0; box < boxes; box++) {
            ink.box(x + room + box * BOX, flow.y() + 1, 3.6, 3.6, false);
        }
    }
}
