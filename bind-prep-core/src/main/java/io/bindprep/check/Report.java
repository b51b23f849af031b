package io.bindprep.check;

import io.bindprep.binding.Plan;
import io.bindprep.block.Block;
import io.bindprep.job.Job;
import io.bindprep.page.DocumentFacts;
import io.bindprep.paper.Stack;
import java.util.List;

/**
 * The whole answer, immutable.
 *
 * @param failed whether the job's failing severity was reached
 * @param whatIf what every setting of the depth stop would do, and the other pitch at each of its settings
 * @param pages every page in order
 * @param findings errors first, then warnings, then notes; within one severity by first page, then rule
 */
public record Report(
        Outcome outcome,
        boolean failed,
        DocumentFacts document,
        Job job,
        Block block,
        Stack stack,
        Plan plan,
        List<WhatIf> whatIf,
        List<PageReport> pages,
        List<Finding> findings) {
    public Report {
        whatIf = List.copyOf(whatIf);
        pages = List.copyOf(pages);
        findings = List.copyOf(findings);
    }
}
