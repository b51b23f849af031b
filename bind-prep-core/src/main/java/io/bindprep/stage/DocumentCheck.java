package io.bindprep.stage;

import io.bindprep.binding.Plan;
import io.bindprep.binding.PlanChoices;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.LeafSizes;
import io.bindprep.check.Checker;
import io.bindprep.check.Report;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.Trim;
import io.bindprep.page.DocumentFacts;
import io.bindprep.page.PrevailingSize;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import io.bindprep.run.BookPart;
import io.bindprep.run.Run;
import io.bindprep.run.RunPlanner;
import io.bindprep.unit.Length;
import io.bindprep.volume.Split;
import io.bindprep.volume.VolumePlanner;

/** The stages of a check: page facts, block, stack, plan, the pages' marks, findings. */
public final class DocumentCheck {
    private DocumentCheck() {}

    /**
     * Checks one document on threads of its own.
     *
     * @throws UnreadableInputException where it is not a PDF that can be opened
     * @throws SettingException where the job asks for what the document or the trade does not have
     */
    public static Report run(CheckRequest request) throws UnreadableInputException, SettingException {
        return run(request, PageLook.NONE);
    }

    /** As above, with a further look at each page. */
    public static Report run(CheckRequest request, PageLook further) throws UnreadableInputException, SettingException {
        return TimeLimit.run(request.name(), limit -> stages(request, further, limit));
    }

    private static OpenedPdf opened(CheckRequest request) throws UnreadableInputException {
        return request.digest() ? Intake.open(request.source()) : Intake.known(request.source(), "");
    }

    private static Report stages(CheckRequest request, PageLook further, TimeLimit limit)
            throws UnreadableInputException, SettingException {
        Job job = request.job();
        limit.openingFor(request.file().toFile().length());
        try (OpenedPdf pdf = opened(request)) {
            DocumentFacts facts = pdf.facts();
            limit.extendFor(facts.pages().size() * (further == PageLook.NONE ? 1 : 2));
            Length width;
            Length height;
            Trim trim = job.trim();
            if (trim != null) {
                width = trim.width();
                height = trim.height();
            } else {
                PrevailingSize size = PrevailingSize.of(facts.pages());
                width = size.width();
                height = size.height();
            }
            Block block = BlockBuilder.build(job, facts.pages().size());
            LeafSizes sizes = new LeafSizes(job, facts.pages(), width, height);
            Stack stack = StackEstimator.estimate(sizes.of(block.leaves()));
            PlanChoices choices =
                    Planner.choices(job, block, stack, job.bindingEdge() == BindingEdge.TOP ? width : height);
            PlanComparison compared = PlanComparison.of(request, pdf, block, choices, further, limit);
            Plan plan = compared.plan();
            Split split = VolumePlanner.split(job, plan, block, sizes, facts.outline());
            Run run = RunPlanner.plan(job, sizes, BookPart.parts(block, stack, plan, split));
            return Checker.report(
                    pdf.identified(), job, block, stack, plan, compared.whatIf(), split, run, compared.verdicts());
        }
    }
}
