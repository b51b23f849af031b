package io.bindprep.check;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.LeafSizes;
import io.bindprep.job.BindingEdge;
import io.bindprep.job.Job;
import io.bindprep.job.JobReader;
import io.bindprep.job.JobSettings;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Verdict;
import io.bindprep.page.DocumentFacts;
import io.bindprep.page.PageFacts;
import io.bindprep.page.Pages;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.run.BookPart;
import io.bindprep.run.Run;
import io.bindprep.run.RunPlanner;
import io.bindprep.unit.Length;
import io.bindprep.volume.Split;
import io.bindprep.volume.VolumePlanner;
import java.util.List;

/** The report on a book of equal pages that are all clear, planned by its job. */
final class PlannedReport {
    private PlannedReport() {}

    static Report of(String yaml, int pages, double widthMm, double heightMm) throws Exception {
        return of(JobReader.toJob(JobSettings.read(yaml, "job.yaml")), pages, widthMm, heightMm);
    }

    static Report of(Job job, int pages, double widthMm, double heightMm) throws Exception {
        Length width = Length.ofMm(String.valueOf(widthMm));
        Length height = Length.ofMm(String.valueOf(heightMm));
        List<PageFacts> facts = Pages.of(pages, widthMm, heightMm);
        Block block = BlockBuilder.build(job, pages);
        LeafSizes sizes = new LeafSizes(job, facts, width, height);
        Stack stack = StackEstimator.estimate(sizes.of(block.leaves()));
        Plan plan = Planner.plan(job, block, stack, job.bindingEdge() == BindingEdge.TOP ? width : height);
        Split split = VolumePlanner.split(job, plan, block, sizes, List.of());
        Run run = RunPlanner.plan(job, sizes, BookPart.parts(block, stack, plan, split));
        List<PageVerdict> clear = facts.stream()
                .map(f -> new PageVerdict(f.page(), Verdict.CLEAR, null, List.of(), false, null))
                .toList();
        DocumentFacts document = new DocumentFacts("book.pdf", "", "00ff", facts, false, 0, false, 0, List.of(), true);
        return Scenario.registered(Checker.report(document, job, block, stack, plan, List.of(), split, run, clear));
    }

    static List<String> findings(Report report, Severity severity) {
        return report.findings().stream()
                .filter(f -> f.severity() == severity)
                .map(Finding::rule)
                .toList();
    }
}
