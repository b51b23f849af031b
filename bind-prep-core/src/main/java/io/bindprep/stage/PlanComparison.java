package io.bindprep.stage;

import io.bindprep.binding.Plan;
import io.bindprep.binding.PlanChoices;
import io.bindprep.block.Block;
import io.bindprep.check.WhatIf;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.PlanTrial;
import io.bindprep.marks.Verdict;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.request.CheckRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Every way to punch held against the pages of one scan: the plan that was chosen, its verdicts, and what the others do. */
public record PlanComparison(Plan plan, List<WhatIf> whatIf, List<PageVerdict> verdicts) {
    public static PlanComparison of(
            CheckRequest request, OpenedPdf pdf, Block block, PlanChoices choices, PageLook further, TimeLimit limit)
            throws UnreadableInputException {
        PlanTrial trial = new PlanTrial(
                choices.settings(), choices.others(), block.places().size());
        PageScan.run(request, pdf, block, trial, further, limit);
        PlanChoices.Settled settled = choices.settle(trial.choiceCounts());
        List<Plan> plans = new ArrayList<>(choices.settings());
        plans.set(settled.index(), settled.plan());
        plans.addAll(choices.others());
        List<WhatIf> whatIf = IntStream.range(0, plans.size())
                .mapToObj(i -> new WhatIf(
                        plans.get(i),
                        i == settled.index(),
                        trial.pages(i, Verdict.HIT),
                        trial.pages(i, Verdict.TIGHT),
                        trial.pages(i, Verdict.UNCHECKED)))
                .toList();
        return new PlanComparison(settled.plan(), whatIf, trial.verdicts(settled.index()));
    }
}
