package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.paint.Type;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Sets the lifts of a copy, or of one volume of it, to be ticked off. */
final class LiftPainter {
    private static final double BOX = 5.2;

    /** Boxes of one lift on a line, beside its pages. */
    private static final int MOST_BOXES = 16;

    private static final double TALLY = 6;

    private final JobSheet sheet;
    private final JobSheet.VolumeSettings part;
    private final Flow flow;
    private final Type plain;
    private final Type bold;
    private final List<String> lifts;

    /**
     * Layout of the lifts.
     *
     * @param boxes of one lift; one where a tally counts the copies
     * @param across lifts on a line
     */
    private record Layout(double points, double step, int boxes, int across) {
        double height(int lifts) {
            return (lifts + across - 1) / across * step;
        }
    }

    LiftPainter(JobSheet sheet, JobSheet.VolumeSettings part, Flow flow, Type plain, Type bold) {
        this.sheet = sheet;
        this.flow = flow;
        this.plain = plain;
        this.bold = bold;
        this.part = part;
        this.lifts = IntStream.range(0, part.lifts().size())
                .mapToObj(i -> "Lift " + (i + 1) + ": " + part.lifts().get(i))
                .toList();
    }

    /**
     * A box for each lift of each copy; a tally for more copies than fit a line, or where only that leaves the page so
     * much room for the steps that follow.
     */
    void paint(double follows) throws IOException {
        Layout layout = layout(follows);
        boolean tally = layout.boxes < sheet.copies();
        flow.heading(
                bold,
                (tally ? "Lifts: tick each off · " : "Lifts, a box for every copy · ")
                        + part.strokes()
                        + (part.strokes() == 1 ? " stroke" : " strokes")
                        + (sheet.parts().size() > 1 ? " for this volume" : " in all"),
                6);
        double width = flow.room() / layout.across;
        for (int i = 0; i < lifts.size(); i += layout.across) {
            flow.need(layout.step);
            for (int side = 0; side < layout.across && i + side < lifts.size(); side++) {
                lift(lifts.get(i + side), flow.left() + side * width, width, layout);
            }
            flow.down(layout.step);
        }
        if (tally) {
            flow.need(TALLY);
            flow.ink().text(plain, 9, flow.left(), flow.y() + 4.6, "Tally of " + sheet.copies() + " copies punched:");
            flow.ink().width(0.15);
            flow.ink().line(flow.left() + 50, flow.y() + 5, flow.left() + flow.room(), flow.y() + 5);
            flow.down(TALLY);
        }
    }

    private Layout layout(double follows) {
        List<Layout> all = Stream.of(
                        sheet.copies() <= MOST_BOXES ? layout(9, 5.3, sheet.copies()) : null,
                        sheet.copies() <= MOST_BOXES ? layout(8, 4.6, sheet.copies()) : null,
                        sheet.copies() > 1 ? layout(9, 5.3, 1) : null,
                        layout(8, 4.6, 1),
                        layout(7.5, 4.2, 1))
                .filter(l -> l != null)
                .toList();
        return all.stream()
                .filter(l -> flow.fits(
                        Flow.HEADING + l.height(lifts.size()) + (l.boxes < sheet.copies() ? TALLY : 0) + follows))
                .findFirst()
                .orElse(all.get(all.size() - 1));
    }

    /** As many lifts on a line as the longest leaves room for. */
    private Layout layout(double points, double step, int boxes) {
        double longest =
                lifts.stream().mapToDouble(l -> plain.widthMm(l, points)).max().orElse(0);
        int across = (int) Math.floor(flow.room() / (longest + boxes * BOX + 5));
        return new Layout(points, step, boxes, Math.max(1, Math.min(3, across)));
    }

    private void lift(String text, double x, double width, Layout layout) throws IOException {
        Ink ink = flow.ink();
        ink.width(0.3);
        double room = width - layout.boxes * BOX - 4;
        ink.text(
                plain,
                layout.points,
                x,
                flow.y() + 4.2,
                plain.lines(text, layout.points, room).get(0));
        for (int box = 0; box < layout.boxes; box++) {
            ink.box(x + room + box * BOX, flow.y() + 1, 3.4, 3.4, false);
        }
    }
}
