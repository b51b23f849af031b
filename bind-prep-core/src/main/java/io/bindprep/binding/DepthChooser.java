package io.bindprep.binding;

import io.bindprep.binding.Depth.Decider;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Limits;
import io.bindprep.catalogue.Method;
import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Chooses among the settings of a punch's depth stop: the deepest that suits the element, at which pages turn freely and
 * which hits no more of the content than a shallower one. A shop's punch may say from which stack on each setting suits.
 */
final class DepthChooser {
    private final Job job;
    private final Stack stack;
    private final Length usual;
    private final @Nullable Length size;
    private final List<Plan> plans;
    private final List<PageCount> counts;

    /**
     * A choice.
     *
     * @param usual the pattern's own centre
     * @param size the size of the element, of the largest where none takes the whole; null where none is known
     * @param plans one for each setting, shallow to deep
     * @param counts what each does to the content; empty where nobody looked
     */
    DepthChooser(Job job, Stack stack, Length usual, @Nullable Length size, List<Plan> plans, List<PageCount> counts) {
        this.job = job;
        this.stack = stack;
        this.usual = usual;
        this.size = size;
        this.plans = plans;
        this.counts = counts;
    }

    /** The setting's place in the list, and its plan with the reason. */
    PlanChoices.Settled choose() {
        String named = job.depth();
        if (named != null) {
            int at = DepthSettings.indexOf(named, plans);
            return settled(at, Decider.JOB, new DepthGround.Asked(turns(at)));
        }
        if (plans.size() == 1) {
            return settled(0, Decider.PUNCH, new DepthGround.OnlySetting(turns(0)));
        }
        if (job.binding() == Method.RINGS) {
            int at = IntStream.range(0, plans.size())
                    .boxed()
                    .min(Comparator.comparing(
                            i -> plans.get(i).edgeDistance().minus(usual).abs()))
                    .orElseThrow();
            return settled(at, Decider.PATTERN, new DepthGround.RingMechanism());
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
        Decider decider = best != free ? Decider.CONTENT : free != suited ? Decider.TURNING : suits();
        if (none && suited == 0) {
            decider = Decider.TURNING;
        }
        return settled(
                best,
                decider,
                new DepthGround.Weighed(
                        suggestion(),
                        name(suited),
                        free == suited ? null : turns(suited),
                        turns(free),
                        none,
                        content(turning, best)));
    }

    /** The deepest setting that suits, the shallowest where none does. */
    private int suited() {
        return IntStream.range(0, plans.size())
                .filter(i -> stepped() ? reached(i) : suits(i))
                .max()
                .orElse(0);
    }

    /** Returns true if the punch says itself from which stack on its settings suit. */
    private boolean stepped() {
        return plans.stream().anyMatch(p -> p.depth().setting().fromStack() != null);
    }

    private boolean reached(int at) {
        Length from = depth(at).setting().fromStack();
        return from == null || stack.nominal().compareTo(from) >= 0;
    }

    private boolean suits(int at) {
        return size != null && depth(at).outside().compareTo(share(size)) <= 0;
    }

    private Length share(Length element) {
        return Length.ofMicrometres(
                element.micrometres().multiply(job.catalogue().limits().depthShare()));
    }

    private Decider suits() {
        return stepped() ? Decider.THICKNESS : Decider.ELEMENT;
    }

    private DepthGround.Suggestion suggestion() {
        if (stepped()) {
            return new DepthGround.ByStack(stack.nominal());
        }
        if (size == null) {
            return new DepthGround.NoElement();
        }
        boolean largest = plans.get(0).element() == null;
        Limits limits = job.catalogue().limits();
        return new DepthGround.BySize(size, largest, share(size), limits.depthShare(), limits.depthShareSource());
    }

    /** The deepest of those with the fewest pages hit, then the fewest tight. */
    private int leastHit(List<Integer> settings) {
        Comparator<Integer> least = Comparator.<Integer>comparingInt(
                        i -> counts.get(i).hit())
                .thenComparingInt(i -> counts.get(i).tight())
                .thenComparing(Comparator.reverseOrder());
        return settings.stream().min(least).orElseThrow();
    }

    private DepthGround.@Nullable Content content(List<Integer> settings, int best) {
        if (counts.isEmpty()) {
            return null;
        }
        List<DepthGround.Count> each = settings.stream()
                .map(i -> new DepthGround.Count(name(i), counts.get(i)))
                .toList();
        return new DepthGround.Content(each, counts.get(best).unchecked());
    }

    private DepthGround.Turns turns(int at) {
        Element element = plans.get(at).element();
        return new DepthGround.Turns(
                depth(at).outside(),
                depth(at).turnsBelow(),
                element == null ? null : element.size(),
                stack.deciding(job.bySize()),
                job.bySize());
    }

    private PlanChoices.Settled settled(int at, Decider decider, DepthGround ground) {
        Plan plan = plans.get(at);
        return new PlanChoices.Settled(
                at, plan.decided(decider, new Reason.DepthChosen(plan.depth().setting(), ground)));
    }

    private Depth depth(int at) {
        return plans.get(at).depth();
    }

    private String name(int at) {
        return depth(at).setting().name();
    }
}
