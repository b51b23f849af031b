package io.bindprep.check;

import io.bindprep.binding.Plan;
import io.bindprep.block.Block;
import io.bindprep.job.FailOn;
import io.bindprep.job.Job;
import io.bindprep.marks.PageVerdict;
import io.bindprep.marks.Verdict;
import io.bindprep.page.DocumentFacts;
import io.bindprep.paper.Stack;
import io.bindprep.run.Run;
import io.bindprep.volume.Split;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Holds every rule against what the stages before found out, and decides the outcome. */
public final class Checker {
    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::severity)
            .thenComparing(f -> f.pages().isEmpty() ? 0 : f.pages().get(0))
            .thenComparing(Finding::rule)
            .thenComparing(Finding::message);

    private Checker() {}

    /**
     * The report. The outcome is {@link Outcome#FINDINGS} where a finding reaches the job's failing severity, or is an
     * error where the job never fails; a page that was not read whole is always an error.
     *
     * @param whatIf what every way to punch that was weighed does, the chosen one too
     * @param verdicts one for each page, in order
     * @throws IllegalArgumentException where pages, places and verdicts are not equally many
     */
    public static Report report(
            DocumentFacts document,
            Job job,
            Block block,
            Stack stack,
            Plan plan,
            List<WhatIf> whatIf,
            Split split,
            Run run,
            List<PageVerdict> verdicts) {
        List<PageVerdict> honest = verdicts.stream().map(Checker::honest).toList();
        Situation situation = new Situation(document, job, block, stack, plan, split, run, honest);
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : Rules.ALL) {
            findings.addAll(rule.find(situation));
        }
        findings = new ArrayList<>(Accepting.of(job.accepted(), findings, honest));
        findings.sort(ORDER);
        Severity least = job.failOn() == FailOn.WARNING ? Severity.WARNING : Severity.ERROR;
        boolean reached = findings.stream()
                .anyMatch(f -> f.accepted() == null && f.severity().compareTo(least) <= 0);
        List<PageReport> pages = IntStream.range(0, honest.size())
                .mapToObj(i ->
                        new PageReport(document.pages().get(i), block.places().get(i), honest.get(i)))
                .toList();
        return new Report(
                reached ? Outcome.FINDINGS : document.present() ? Outcome.GOOD : Outcome.PLANNED,
                reached && job.failOn() != FailOn.NEVER,
                document,
                job,
                block,
                stack,
                plan,
                whatIf,
                split,
                run,
                pages,
                findings);
    }

    // a page with a reason why it was not read whole is not checked, whatever else was seen on it
    private static PageVerdict honest(PageVerdict v) {
        return v.unchecked() == null || v.verdict() == Verdict.UNCHECKED
                ? v
                : new PageVerdict(
                        v.page(), Verdict.UNCHECKED, v.nearest(), v.hits(), v.background(), v.unchecked(), v.basics());
    }
}
