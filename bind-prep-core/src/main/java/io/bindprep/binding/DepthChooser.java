package io.bindprep.binding;

import io.bindprep.binding.Depth.Decider;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Method;
import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.unit.Length;
import io.bindprep.wording.LengthText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Chooses among the settings of a punch's depth stop: the deepest that the stack's thickness suggests, at which pages
 * turn freely and which hits no more of the content than a shallower one.
 */
final class DepthChooser {
    // up to 1/4 in of stack the shallowest, from 5/16 in a middle one, at 9/16 in the deep one; when in doubt shallow:
    // common practice, no source
    private static final Length MIDDLE_FROM = Length.ofInch(5, 16);
    private static final Length DEEP_FROM = Length.ofInch(9, 16);
    private static final String RULE =
            "up to 1/4 in of stack the shallowest setting, from 5/16 in a middle one, from 9/16 in the"
                    + " deepest, in doubt the shallower; common practice, no source";

    private final Job job;
    private final Stack stack;
    private final Length usual;
    private final List<Plan> plans;
    private final List<PageCount> counts;

    /**
     * A choice.
     *
     * @param usual the pattern's own centre
     * @param plans one for each setting, shallow to deep
     * @param counts what each does to the content; empty where nobody looked
     */
    DepthChooser(Job job, Stack stack, Length usual, List<Plan> plans, List<PageCount> counts) {
        this.job = job;
        this.stack = stack;
        this.usual = usual;
        this.plans = plans;
        this.counts = counts;
    }

    /** The setting's place in the list, and its plan with the reason. */
    PlanChoices.Settled choose() {
        String named = job.depth();
        if (named != null) {
            int at = DepthSettings.indexOf(named, plans);
            return settled(at, Decider.JOB, "as the job says; " + turning(at));
        }
        if (plans.size() == 1) {
            return settled(0, Decider.PUNCH, "the only setting of the punch; " + turning(0));
        }
        if (job.binding() == Method.RINGS) {
            int at = IntStream.range(0, plans.size())
                    .boxed()
                    .min(Comparator.comparing(
                            i -> plans.get(i).edgeDistance().minus(usual).abs()))
                    .orElseThrow();
            return settled(at, Decider.PATTERN, "where ring mechanisms have the holes, the centre of the pattern");
        }
        int suited = suited();
        List<Integer> turning = new ArrayList<>(IntStream.rangeClosed(0, suited)
                .filter(i -> !depth(i).binds())
                .boxed()
                .toList());
        boolean none = turning.isEmpty();
        if (none) {
            turning.add(0);
        }
        int free = turning.get(turning.size() - 1);
        int best = counts.isEmpty() ? free : leastHit(turning);
        Decider decider = best != free ? Decider.CONTENT : free != suited ? Decider.TURNING : Decider.THICKNESS;
        if (none && suited == 0) {
            decider = Decider.TURNING;
        }
        String text = (plans.get(0).element() == null
                        ? "as no element is known to take the whole, a stack of "
                        : "the thinnest likely stack of ")
                + LengthText.both(stack.min()) + " suggests " + name(suited) + " ("
                + RULE + "); "
                + (free != suited ? "at " + name(suited) + " " + turning(suited) + "; " : "")
                + turning(free)
                + (none ? ", the shallowest there is" : "")
                + content(turning, best);
        return settled(best, decider, text);
    }

    private int suited() {
        int last = plans.size() - 1;
        return stack.min().compareTo(MIDDLE_FROM) < 0 ? 0 : stack.min().compareTo(DEEP_FROM) < 0 ? last / 2 : last;
    }

    /** The deepest of those with the fewest pages hit, then the fewest tight. */
    private int leastHit(List<Integer> settings) {
        Comparator<Integer> least = Comparator.<Integer>comparingInt(
                        i -> counts.get(i).hit())
                .thenComparingInt(i -> counts.get(i).tight())
                .thenComparing(Comparator.reverseOrder());
        return settings.stream().min(least).orElseThrow();
    }

    private String content(List<Integer> settings, int best) {
        if (counts.isEmpty()) {
            return "; the content was not looked at";
        }
        List<String> each = settings.stream()
                .map(i -> name(i) + " hits " + counts.get(i).hit() + " and has "
                        + counts.get(i).tight() + " tight")
                .toList();
        int unchecked = counts.get(best).unchecked();
        return "; of the pages " + String.join(", ", each)
                + (unchecked == 0 ? "" : ", and of " + unchecked + " that could not be read whole nothing is known");
    }

    private String turning(int at) {
        Depth depth = depth(at);
        Element element = plans.get(at).element();
        if (depth.turnsBelow() == null || element == null) {
            return "whether pages turn freely is not known without an element";
        }
        return depth.outside().inMm() + " of paper outside the holes is "
                + (depth.turnsFreely()
                        ? "less than the " + depth.turnsBelow().inMm() + " at which pages no longer turn freely"
                        : "not less than " + depth.turnsBelow().inMm() + ", so that pages do not turn freely")
                + " (sqrt(D^2 - t^2) of the element of " + element.size().inMm() + " and the thickest likely stack of "
                + stack.max().inMm() + ", derived)";
    }

    private PlanChoices.Settled settled(int at, Decider decider, String why) {
        Depth depth = depth(at);
        String text = "depth " + name(at) + ", holes "
                + LengthText.both(depth.setting().centre()) + " from the binding edge ("
                + depth.setting().source() + "): " + why;
        return new PlanChoices.Settled(at, plans.get(at).decided(decider, text));
    }

    private Depth depth(int at) {
        return plans.get(at).depth();
    }

    private String name(int at) {
        return depth(at).setting().name();
    }
}
