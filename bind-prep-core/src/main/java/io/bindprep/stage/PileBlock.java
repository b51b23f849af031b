package io.bindprep.stage;

import io.bindprep.block.Block;
import io.bindprep.block.BlockBuilder;
import io.bindprep.job.Cover;
import io.bindprep.job.Job;
import io.bindprep.job.PageRange;
import io.bindprep.job.Sides;
import io.bindprep.paper.MeasuredStack;
import io.bindprep.problem.SettingException;
import io.bindprep.request.Pile;
import io.bindprep.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The leaves that a pile stands for.
 *
 * @param job its stock by the measured stack where there is one
 */
record PileBlock(Job job, Block block) {
    /** As many as a check takes; far more than any punch or element. */
    private static final int MOST_LEAVES = 20_000;

    private static final Length THICKEST = Length.ofMm(2000);
    private static final List<String> KEYS = List.of("leaves", "pages", "stack");

    static PileBlock of(Job job, Pile pile) throws SettingException {
        Integer leaves = within("leaves", pile.leaves(), MOST_LEAVES);
        Integer pages = within("pages", pile.pages(), 2 * MOST_LEAVES);
        Length stack = pile.stack();
        if (pages != null && (leaves != null || stack != null)) {
            throw new SettingException(
                    "pages",
                    pages.toString(),
                    "does not go together with leaves or a measured stack",
                    "Give the pages alone, or leaves, a measured stack, or both of these.",
                    KEYS);
        }
        if (pages != null) {
            return new PileBlock(job, BlockBuilder.build(job, pages));
        }
        Job measured = job;
        if (stack != null) {
            checkStack(job, stack);
            leaves = leaves == null ? MeasuredStack.leaves(job.stock(), stack) : leaves;
            within("stack", leaves, MOST_LEAVES);
            measured = measured(job, leaves, stack);
        }
        if (leaves == null) {
            throw new SettingException(
                    "leaves",
                    "",
                    "is missing; without a PDF nothing else tells how many leaves there are",
                    "Give leaves, pages, or the thickness of the measured stack.",
                    KEYS);
        }
        return new PileBlock(measured, built(measured, leaves));
    }

    private static @Nullable Integer within(String key, @Nullable Integer count, int most) throws SettingException {
        if (count != null && (count < 1 || count > most)) {
            throw new SettingException(
                    key,
                    count.toString(),
                    count + " is outside 1 to " + most,
                    "Write a whole number from 1 to " + most + ".",
                    List.of());
        }
        return count;
    }

    private static void checkStack(Job job, Length stack) throws SettingException {
        if (stack.compareTo(Length.ZERO) <= 0 || stack.compareTo(THICKEST) > 0) {
            throw wrongStack(
                    stack,
                    "is outside 0 to " + THICKEST.inMm(),
                    "Write the thickness of one copy, for example \"12 mm\".");
        }
        if (!job.inserts().isEmpty()
                || !job.special().tabs().isEmpty()
                || !job.special().foldOuts().isEmpty()) {
            throw wrongStack(
                    stack,
                    "holds inserts, tabs or fold-outs, so that it does not tell the thickness of a leaf",
                    "Count the leaves, and give the measured pack of the stock instead.");
        }
    }

    private static Job measured(Job job, int leaves, Length stack) throws SettingException {
        try {
            return job.withStock(MeasuredStack.stock(job.stock(), leaves, stack));
        } catch (IllegalArgumentException e) {
            throw wrongStack(
                    stack,
                    "over " + leaves + " leaves gives " + e.getMessage() + ", which no stock has",
                    "Measure and count once more: leaves without covers, thickness with its unit.");
        }
    }

    private static SettingException wrongStack(Length stack, String what, String remedy) {
        return new SettingException("stack", stack.inMm(), stack.inMm() + " " + what, remedy, List.of());
    }

    /** As many pages as give those leaves, backs printed where the job prints two sides. */
    private static Block built(Job job, int leaves) throws SettingException {
        PageRange front = printed(job.frontCover());
        PageRange back = printed(job.backCover());
        if (back != null) {
            Block block = BlockBuilder.build(job, back.last());
            if (block.bodyLeaves() == leaves) {
                return block;
            }
            throw new SettingException(
                    "leaves",
                    "" + leaves,
                    leaves + " leaves do not go with a back cover printed as page " + back.last() + ", which leaves "
                            + block.bodyLeaves(),
                    "Correct the leaves or the pages of the back cover, or give pages instead.",
                    List.of());
        }
        int perLeaf = job.sides() == Sides.ONE ? 1 : 2;
        int pages = (front == null ? 0 : front.count()) + perLeaf * leaves;
        Block block = BlockBuilder.build(job, pages);
        // a leaf of one printed side, or a blank tab, takes a leaf without taking its pages
        while (block.bodyLeaves() > leaves && pages > 1) {
            block = BlockBuilder.build(job, --pages);
        }
        if (block.bodyLeaves() != leaves) {
            throw new SettingException(
                    "leaves",
                    "" + leaves,
                    leaves + " leaves do not go with the inserts, tabs and fold-outs of the job",
                    "Correct the leaves, or give pages instead.",
                    List.of());
        }
        return block;
    }

    private static @Nullable PageRange printed(@Nullable Cover cover) {
        return cover == null ? null : cover.printed();
    }
}
