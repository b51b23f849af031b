package io.bindprep.binding;

import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every way to punch that is weighed: the settings of the punch's depth stop, of which one will be chosen, and the other
 * pitch of the method at each of its settings, to compare with.
 */
public final class PlanChoices {
    private final Job job;
    private final Stack stack;
    private final Length usual;
    private final @Nullable Length size;
    private final List<Plan> settings;
    private final List<Plan> others;

    PlanChoices(Job job, Stack stack, Length usual, @Nullable Length size, List<Plan> settings, List<Plan> others) {
        this.job = job;
        this.stack = stack;
        this.usual = usual;
        this.size = size;
        this.settings = List.copyOf(settings);
        this.others = List.copyOf(others);
    }

    /**
     * The plan that was chosen.
     *
     * @param index its place among the settings
     */
    public record Settled(int index, Plan plan) {}

    /** One plan for each setting of the punch, shallow to deep; at least one. */
    public List<Plan> settings() {
        return settings;
    }

    /** One plan for each setting of the other pitch's generic punch; empty where the method has no other or it does not fit. */
    public List<Plan> others() {
        return others;
    }

    /**
     * The plan for what each setting does to the content.
     *
     * @param counts one for each of the settings, in their order
     * @throws IllegalArgumentException where there are more or fewer
     */
    public Settled settle(List<PageCount> counts) {
        if (counts.size() != settings.size()) {
            throw new IllegalArgumentException(counts.size() + " counts for " + settings.size() + " settings");
        }
        return new DepthChooser(job, stack, usual, size, settings, counts).choose();
    }

    /** The plan as far as it can be made without the content. */
    public Plan settleUnseen() {
        return new DepthChooser(job, stack, usual, size, settings, List.of())
                .choose()
                .plan();
    }
}
