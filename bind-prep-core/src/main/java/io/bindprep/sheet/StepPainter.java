package io.bindprep.sheet;

import io.bindprep.paint.Ink;
import io.bindprep.paint.Type;
import io.bindprep.report.words.Sentences;
import io.bindprep.run.Step;
import java.io.IOException;
import java.util.List;

/** Sets steps to be ticked off, closer together where only that keeps them on their page; none breaks across pages. */
final class StepPainter {
    private static final double INDENT = 32;

    private final Flow flow;
    private final Type plain;
    private final Type bold;

    /** Print of the steps: its size in points, and the gap below each in millimetres. */
    private record Print(double points, double gap) {}

    private static final Print USUAL = new Print(9, 0.8);
    private static final Print CLOSE = new Print(8.5, 0.3);

    /** Height of a box to tick. */
    private static final double BOX = 3.8;

    StepPainter(Flow flow, Type plain, Type bold) {
        this.flow = flow;
        this.plain = plain;
        this.bold = bold;
    }

    void paint(String heading, List<Step> steps) throws IOException {
        if (steps.isEmpty()) {
            return;
        }
        double usual =
                steps.stream().mapToDouble(s -> height(s, USUAL) + USUAL.gap).sum();
        Print print = flow.fits(Flow.HEADING + usual) ? USUAL : CLOSE;
        flow.heading(bold, heading, 8);
        for (Step step : steps) {
            flow.need(height(step, print));
            Ink ink = flow.ink();
            double top = flow.y();
            ink.width(0.3);
            ink.box(flow.left(), top + 0.4, 3.4, 3.4, false);
            ink.text(bold, print.points, flow.left() + 5.5, top + 3.1, JobSheet.name(step));
            for (String instruction : Sentences.of(step)) {
                flow.paragraph(plain, print.points, INDENT, instruction);
            }
            flow.down(Math.max(0, top + BOX - flow.y()) + print.gap);
        }
    }

    /** The height of steps with their heading, set as close as may be. */
    double height(List<Step> steps) {
        return steps.isEmpty()
                ? 0
                : Flow.HEADING
                        + steps.stream()
                                .mapToDouble(s -> height(s, CLOSE) + CLOSE.gap)
                                .sum();
    }

    private double height(Step step, Print print) {
        double text = Sentences.of(step).stream()
                .mapToDouble(i -> flow.height(plain, print.points, INDENT, i))
                .sum();
        return Math.max(BOX, text);
    }
}
