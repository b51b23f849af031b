package io.bindprep;

import io.bindprep.binding.Plan;
import io.bindprep.binding.Planner;
import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.block.Leaf;
import io.bindprep.check.Checker;
import io.bindprep.check.Report;
import io.bindprep.job.BoundEdge;
import io.bindprep.job.Job;
import io.bindprep.job.Trim;
import io.bindprep.marks.PageJudge;
import io.bindprep.page.DocumentFacts;
import io.bindprep.page.PrevailingSize;
import io.bindprep.paper.Stack;
import io.bindprep.paper.StackEstimator;
import io.bindprep.pdf.Intake;
import io.bindprep.pdf.OpenedPdf;
import io.bindprep.picture.PagePicture;
import io.bindprep.problem.SettingException;
import io.bindprep.problem.UnreadableInputException;
import io.bindprep.unit.Length;
import java.util.List;

/**
 * The facade: one request in, one report out.
 *
 * <p>Stateless; each call reads one document on threads of its own with deep stacks, bounded in time, and opens no
 * network connection.
 */
public final class BindPrep {
    private BindPrep() {}

    /**
     * Checks one PDF against one job.
     *
     * @throws UnreadableInputException where the file is not a PDF that can be opened; nothing about it is known to be good
     * @throws SettingException where the job asks for what the document or the trade does not have
     */
    public static Report check(CheckRequest request) throws UnreadableInputException, SettingException {
        return Bounded.run(request.name(), bound -> checkHere(request, bound));
    }

    private static Report checkHere(CheckRequest request, Bounded bound)
            throws UnreadableInputException, SettingException {
        Job job = request.job();
        try (OpenedPdf pdf = Intake.open(request.file(), request.name(), request.password())) {
            DocumentFacts facts = pdf.facts();
            bound.extendFor(facts.pages().size());
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
            Stack stack = StackEstimator.estimate(
                    block.leaves().stream().map(Leaf::stock).toList(), width, height);
            Plan plan = Planner.plan(job, block, stack, job.boundEdge() == BoundEdge.TOP ? width : height);
            return Checker.report(
                    facts, job, block, stack, plan, PageScan.run(request, pdf, block, new PageJudge(plan), bound));
        }
    }

    /**
     * Pictures of the pages of a report that are not clear, for {@code HtmlReport}: at most 30, those punched first,
     * then those unread, then those tight, and none further once they take 12 MB. In page order. Opens the file again.
     *
     * @param request the one that the report came from; its progress is told of pictures
     * @throws UnreadableInputException where the file cannot be opened any more
     */
    public static List<PagePicture> pictures(CheckRequest request, Report report) throws UnreadableInputException {
        PictureScan scan = new PictureScan(request, report);
        if (scan.pages() == 0) {
            return List.of();
        }
        try {
            return Bounded.run(request.name(), bound -> {
                scan.run(bound);
                return scan.drawn();
            });
        } catch (UnreadableInputException e) {
            if (e.reason() == UnreadableInputException.Reason.TOO_MUCH) {
                return scan.drawn(); // time or memory is spent: what there is shows the worst pages
            }
            throw e;
        } catch (SettingException e) {
            throw new IllegalStateException("pictures ask for no setting", e);
        }
    }
}
