package io.bindprep.report.words;

import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Method;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.run.Step.Work;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** English of the steps that differ by method: covers, threading, closing. */
final class ClosingWords {
    private final Job job;
    private final List<Plan> plans;
    private final String last;
    private final String copy;

    private ClosingWords(Job job, List<Plan> plans, boolean volume) {
        this.job = job;
        this.copy = volume ? "volume" : "copy";
        this.plans = plans;
        this.last = job.backCover() != null ? "back cover" : "last leaf";
    }

    static List<String> of(Work work, Job job, List<Plan> plans, boolean volume) {
        ClosingWords words = new ClosingWords(job, plans, volume);
        return switch (work) {
            case COVERS -> List.of(words.covers());
            case THREAD -> List.of(words.each(words::thread));
            case CLOSE -> words.close();
            default -> List.of(words.turn());
        };
    }

    private String each(Function<Plan, String> sentence) {
        return StepWords.each(plans.size(), i -> sentence.apply(plans.get(i)));
    }

    private String covers() {
        if (job.binding() == Method.WIRE) {
            return "Gather each " + copy + " front up. Lay its " + last + " on top of the front, its "
                    + (job.backCover() != null ? "outside" : "last page") + " down.";
        }
        String front = job.frontCover() == null ? "" : "front cover first";
        String back = job.backCover() == null ? "" : "back cover last";
        String covers = Stream.of(front, back).filter(c -> !c.isEmpty()).collect(Collectors.joining(", "));
        return "Gather each " + copy + " in reading order" + (covers.isEmpty() ? "." : ", " + covers + ".");
    }

    private String thread(Plan plan) {
        return switch (job.binding()) {
            case WIRE ->
                "Cut " + cut(plan, "wire", "loop") + " Hang the " + copy + " in " + (inTwo(plan) ? "them" : "it")
                        + ", one loop per hole." + hanger(plan);
            case COIL ->
                "Curve the binding edge slightly. Start at one end and turn coil " + name(plan)
                        + " through all "
                        + plan.row().holes().size() + " holes.";
            case COMB ->
                "Cut " + cut(plan, "comb", "ring")
                        + (inTwo(plan)
                                ? " Open each on the machine no wider than needed. Hang the " + copy + " on them,"
                                : " Open it on the machine no wider than needed. Hang the " + copy + " on it,")
                        + " a ring in every hole.";
            case RINGS ->
                "Open the " + name(plan) + " mechanism, both halves at once. Lay the " + copy + " on its "
                        + plan.row().holes().size() + " rings.";
        };
    }

    private List<String> close() {
        return switch (job.binding()) {
            case WIRE ->
                List.of(
                        each(plan -> "Set the closer to " + name(plan) + ", the nominal size of the wire."),
                        "Close the first one and look at it. Closed too far, loops are crushed; too little, leaves"
                                + " fall out. Correct the closer.");
            case COIL ->
                List.of("Cut the coil a little beyond both ends of the leaves. Crimp the ends inwards, so that the coil"
                        + " cannot unwind or catch.");
            case COMB -> List.of("Let the comb close slowly. See that every ring end lies under the spine.");
            case RINGS -> List.of("Close the rings. See that they meet without a gap.");
        };
    }

    /**
     * Laid on the front, outside down, and turned round the wire to the back, a cover ends up with its outside out and
     * the seam between it and the last leaf (common practice; the turn is derived).
     */
    private String turn() {
        boolean top = job.bindingEdge() == BindingEdge.TOP;
        return "Turn the " + last + (top ? " over the top edge" : " round the wire")
                + " to the back. The seam of the wire is then hidden inside it.";
    }

    /** "wire 3/16 in to 34 loops.", or "two pieces of wire 3/16 in, 12 and 12 loops." */
    private static String cut(Plan plan, String kind, String noun) {
        List<Integer> pieces = plan.pieces();
        return inTwo(plan)
                ? "two pieces of " + kind + " " + name(plan) + ", " + pieces.get(0) + " and "
                        + StepWords.counted(pieces.get(1), noun) + "."
                : kind + " " + name(plan) + " to " + StepWords.counted(plan.loops(), noun) + ".";
    }

    private static boolean inTwo(Plan plan) {
        return plan.pieces().size() > 1;
    }

    private static String hanger(Plan plan) {
        return plan.row().gap() == null ? "" : " Before closing, lay the hanger in the gap, its ends in the loops.";
    }

    private static String name(Plan plan) {
        return element(plan).name();
    }

    // steps are told only where every part has one
    private static Element element(Plan plan) {
        return Objects.requireNonNull(plan.element());
    }
}
