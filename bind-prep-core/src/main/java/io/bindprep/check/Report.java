package io.bindprep.check;

import io.bindprep.binding.Plan;
import io.bindprep.block.Block;
import io.bindprep.job.Job;
import io.bindprep.page.DocumentFacts;
import io.bindprep.paper.Stack;
import io.bindprep.run.Run;
import io.bindprep.volume.Split;
import io.bindprep.volume.Volume;
import io.bindprep.wording.Measures;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The whole answer, immutable.
 *
 * @param failed whether the job's failing severity was reached
 * @param whatIf what every setting of the depth stop would do, and the other pitch at each of its settings
 * @param split the ways out where no element takes the stack
 * @param run materials, lifts and steps of all copies
 * @param pages every page in order; empty where no document was checked
 * @param findings errors first, then warnings, then notes; within one severity by first page, then rule
 * @param recheck comparison with an earlier check; null where none was asked for
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
        Split split,
        Run run,
        List<PageReport> pages,
        List<Finding> findings,
        @Nullable Recheck recheck) {
    public Report {
        whatIf = List.copyOf(whatIf);
        pages = List.copyOf(pages);
        findings = List.copyOf(findings);
    }

    /** A report that is compared with no earlier one. */
    public Report(
            Outcome outcome,
            boolean failed,
            DocumentFacts document,
            Job job,
            Block block,
            Stack stack,
            Plan plan,
            List<WhatIf> whatIf,
            Split split,
            Run run,
            List<PageReport> pages,
            List<Finding> findings) {
        this(outcome, failed, document, job, block, stack, plan, whatIf, split, run, pages, findings, null);
    }

    /**
     * The same report compared with an earlier check.
     *
     * @param sameJob whether both were held against the same job
     * @param onlyNewFails whether a finding that was there before, no better than now, fails nothing
     */
    public Report since(Earlier earlier, boolean sameJob, boolean onlyNewFails) {
        return new Comparison(earlier, this).report(sameJob, onlyNewFails);
    }

    /** Returns true if a document was checked; else this is a plan alone, and nothing is known of any page. */
    public boolean documentChecked() {
        return document.present();
    }

    /** Fingerprint of what a finding saw, as a job that accepts it must name it. */
    public String seen(Finding finding) {
        return Fingerprint.of(finding, pages.stream().map(PageReport::verdict).toList());
    }

    /** The findings that a job may accept and that does not yet: errors and warnings of what was looked at. */
    public List<Finding> acceptable() {
        return findings.stream()
                .filter(f -> f.accepted() == null && f.severity() != Severity.NOTE && Accepting.acceptable(f))
                .toList();
    }

    /** Units and steps in which this report shows lengths are shown to people. */
    public Measures measures() {
        return Situation.measures(job, document);
    }

    /** The volumes that the book goes into; empty where it is one. */
    public List<Volume> volumes() {
        return split.volumes();
    }
}
