package io.bindprep.run;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The steps that differ by method: covers, threading, closing. */
final class ClosingSteps {
    private ClosingSteps() {}

    static List<Step> of(Job job, List<BookPart> parts) {
        return switch (job.binding()) {
            case WIRE -> wire(job, parts);
            case COIL -> coil(parts);
            case COMB -> comb(parts);
            case RINGS -> rings(parts);
        };
    }

    /**
     * Laid on the front, outside down, and turned round the wire to the back, a cover ends up with its outside out and
     * the seam between it and the last leaf (common practice; the turn is derived).
     */
    private static List<Step> wire(Job job, List<BookPart> parts) {
        boolean cover = job.backCover() != null;
        String last = cover ? "back cover" : "last leaf";
        boolean top = job.bindingEdge() == BindingEdge.TOP;
        List<Step> steps = new ArrayList<>();
        steps.add(new Step(
                Step.Work.COVERS,
                List.of("Gather each copy front up. Lay its " + last + " on top of the front, its "
                        + (cover ? "outside" : "last page") + " down."),
                List.of()));
        steps.add(new Step(
                Step.Work.THREAD,
                List.of(StepWriter.each(
                        parts,
                        p -> "Cut wire " + name(p.plan()) + " to " + cut(p.plan(), "loop")
                                + " and hang the copy in it, one loop per hole" + hanger(p.plan()) + ".")),
                List.of(Caution.ENDS)));
        steps.add(new Step(
                Step.Work.CLOSE,
                List.of(
                        StepWriter.each(
                                parts, p -> "Set the closer to " + name(p.plan()) + ", the nominal size of the wire."),
                        "Close the first copy and look at it. Closed too far, loops are crushed; too little, leaves"
                                + " fall out. Correct the closer."),
                List.of(Caution.CLOSER)));
        steps.add(new Step(
                Step.Work.TURN_COVER,
                List.of("Turn the " + last + (top ? " over the head" : " round the wire")
                        + " to the back. The seam of the wire is then hidden inside it."),
                List.of()));
        return steps;
    }

    /** "34 loops", or "12 and 12 loops, two pieces". */
    private static String cut(Plan plan, String noun) {
        List<Integer> pieces = plan.pieces();
        return pieces.size() < 2
                ? StepWriter.counted(plan.loops(), noun)
                : pieces.get(0) + " and " + pieces.get(1) + " " + noun + "s, two pieces";
    }

    private static String hanger(Plan plan) {
        return plan.row().gap() == null ? "" : "; lay the hanger in the gap, its ends in the loops, before closing";
    }

    private static List<Step> coil(List<BookPart> parts) {
        return List.of(
                gather(),
                new Step(
                        Step.Work.THREAD,
                        List.of(StepWriter.each(
                                parts,
                                p -> "Lean the binding edge into a curve and screw coil " + name(p.plan())
                                        + " through all "
                                        + p.plan().row().holes().size() + " holes from one end.")),
                        List.of(Caution.ENDS)),
                new Step(
                        Step.Work.CLOSE,
                        List.of(
                                "Cut the coil a little beyond both ends of the sheet and crimp the ends inwards, so that"
                                        + " it can neither run out nor catch."),
                        List.of(Caution.ENDS)));
    }

    private static List<Step> comb(List<BookPart> parts) {
        return List.of(
                gather(),
                new Step(
                        Step.Work.THREAD,
                        List.of(StepWriter.each(
                                parts,
                                p -> "Cut comb " + name(p.plan()) + " to "
                                        + cut(p.plan(), "ring")
                                        + ", open it on the machine no wider than needed and hang the copy on it,"
                                        + " a ring in every hole.")),
                        List.of(Caution.GUARDS)),
                new Step(
                        Step.Work.CLOSE,
                        List.of("Let the comb close slowly and see that every ring end lies under the spine."),
                        List.of()));
    }

    private static List<Step> rings(List<BookPart> parts) {
        return List.of(
                gather(),
                new Step(
                        Step.Work.THREAD,
                        List.of(StepWriter.each(
                                parts,
                                p -> "Open the mechanism of " + name(p.plan())
                                        + ", both halves at once, and lay the copy" + " on its "
                                        + p.plan().row().holes().size() + " rings.")),
                        List.of()),
                new Step(
                        Step.Work.CLOSE,
                        List.of("Close the rings and see that they meet without a gap."),
                        List.of(new Caution("Rings snap shut: mind fingers.", "common practice, no source"))));
    }

    private static Step gather() {
        return new Step(
                Step.Work.COVERS,
                List.of("Gather each copy in reading order, front cover first, back cover last."),
                List.of());
    }

    private static String name(Plan plan) {
        return element(plan).name();
    }

    // steps are written only where every part has one
    private static Element element(Plan plan) {
        return Objects.requireNonNull(plan.element());
    }
}
