package io.bindprep.stage;

import io.bindprep.binding.Plan;
import io.bindprep.binding.PlanChoices;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.LeafSizes;
import io.bindprep.check.Checker;
import io.bindprep.check.Report;
import io.bindprep.check.WhatIf;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.Trim;
import io.bindprep.page.DocumentFacts;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.problem.SettingException;
import io.bindprep.request.PlanRequest;
import io.bindprep.run.BookPart;
import io.bindprep.run.Lift;
import io.bindprep.run.Run;
import io.bindprep.run.RunPlanner;
import io.bindprep.unit.Length;
import io.bindprep.volume.Split;
import io.bindprep.volume.VolumePlanner;
import java.util.List;
import java.util.stream.Stream;

/** The stages of a plan without a document: block, stack, plan, run, findings. No page is looked at, so none is spoken of. */
public final class PilePlan {
    private PilePlan() {}

    /**
     * Plans one job.
     *
     * @throws SettingException where the job asks for what the trade does not have, or size and leaves are not given
     */
    public static Report run(PlanRequest request) throws SettingException {
        Trim trim = request.job().trim();
        if (trim == null) {
            throw new SettingException(
                    "trim",
                    "",
                    "is missing; without a PDF nothing else tells the size of a leaf",
                    "Write the size of the trimmed leaf, for example a4 or \"210 x 297 mm\".",
                    List.of());
        }
        PileBlock pile = PileBlock.of(request.job(), request.pile());
        Job job = pile.job();
        Length width = trim.width();
        Length height = trim.height();
        Block block = new Block(pile.block().leaves(), List.of(), List.of());
        LeafSizes sizes = LeafSizes.withoutDocument(job, width, height);
        Stack stack = StackEstimator.estimate(sizes.of(block.leaves()));
        PlanChoices choices = Planner.choices(job, block, stack, job.bindingEdge() == BindingEdge.TOP ? width : height);
        Plan plan = choices.settleUnseen();
        Split split = VolumePlanner.split(job, plan, block, sizes, List.of());
        Run run = RunPlanner.plan(job, sizes, BookPart.parts(block, stack, plan, split));
        return Checker.report(
                DocumentFacts.none(request.name()),
                job,
                block,
                stack,
                plan,
                whatIf(choices, plan),
                split,
                withoutPages(run),
                List.of());
    }

    private static List<WhatIf> whatIf(PlanChoices choices, Plan chosen) {
        return Stream.concat(choices.settings().stream(), choices.others().stream())
                .map(p -> {
                    boolean same = p.pattern().equals(chosen.pattern())
                            && p.punch().equals(chosen.punch())
                            && p.depth().setting().equals(chosen.depth().setting());
                    return new WhatIf(same ? chosen : p, same, List.of(), List.of(), List.of());
                })
                .toList();
    }

    private static Run withoutPages(Run run) {
        return new Run(
                run.materials(),
                run.folds(),
                run.lifts().stream()
                        .map(l -> new Lift(
                                l.volume(), l.firstLeaf(), l.leaves(), l.cover(), l.kind(), l.thickness(), null, null))
                        .toList(),
                run.strokes(),
                run.steps(),
                run.volumeSteps(),
                run.cautions());
    }
}
