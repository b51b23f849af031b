package io.bindprep.binding;

import io.bindprep.binding.Reason.Topic;
import io.bindprep.block.Block;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Plans the binding: pitch, element, hole row, pins, lifts, closer and margin, each with its reason.
 *
 * <p>An element that does not exist is no exception: the plan's element is null and its reasons say so. A setting that is
 * unknown, or a punch or pattern that the bound edge does not take, is.
 */
public final class Planner {
    // Markovits, "Good Wire Work is a Balancing Act", Printing News: copy at least 3/8 in off at 3:1, 1/2 in at 2:1
    private static final Length CLEAR_3_1 = Length.ofInch(3, 8);
    private static final Length CLEAR_2_1 = Length.ofInch(1, 2);
    // a college print shop's guide: live matter 1/4 in further from the bound edge than usual
    private static final Length CLEAR_OF_HOLE = Length.ofInch(1, 4);

    private final Job job;
    private final Stack stack;
    private final Pattern pattern;
    private final Punch punch;
    private final List<Reason> because = new ArrayList<>();

    private Planner(Job job, Stack stack, PunchChoice choice) {
        this.job = job;
        this.stack = stack;
        this.pattern = choice.pattern();
        this.punch = choice.punch();
        reason(Topic.PITCH, choice.because());
    }

    /**
     * The plan on the job's punch, else on the pattern's generic one.
     *
     * @param boundEdgeLength the length of the bound edge of the trimmed leaf
     * @throws SettingException where pitch or punch are unknown, do not go together, or do not fit the bound edge
     */
    public static Plan plan(Job job, Block block, Stack stack, Length boundEdgeLength) throws SettingException {
        return new Planner(job, stack, PunchChoice.of(job, stack, boundEdgeLength)).plan(block, boundEdgeLength);
    }

    /**
     * The plan on a punch of the shop's own.
     *
     * @throws SettingException as {@link #plan(Job, Block, Stack, Length)}
     */
    public static Plan plan(Job job, Block block, Stack stack, Length boundEdgeLength, Punch punch)
            throws SettingException {
        return new Planner(job, stack, PunchChoice.of(job, punch)).plan(block, boundEdgeLength);
    }

    private Plan plan(Block block, Length edge) throws SettingException {
        Length axis = pattern.axis();
        Length outside = axis.minus(pattern.holeAcross().half());
        ElementPlanner.Chosen chosen = new ElementPlanner(
                        job,
                        block,
                        stack,
                        new Sizing(job.catalogue().elements(), pattern, job.clearance(), outside),
                        this::reason)
                .choose();
        Element element = chosen.element();
        RowPlanner rows = new RowPlanner(job, pattern, punch, edge, this::reason);
        HoleRow row = rows.row();
        Skew skew = rows.skew(row, axis);
        List<Integer> lifts = LiftMaker.lifts(block.leaves(), punch::limit);
        reason(
                Topic.LIFTS,
                "lifts of " + lifts + " sheets: in order, covers by themselves, paper, board and film apart, within "
                        + LiftMaker.limits(block.leaves(), punch::limit) + " (" + punch.source()
                        + "); the machine's manual prevails");
        boolean looped = job.binding() == Method.WIRE || job.binding() == Method.COMB;
        Length closer = job.binding() == Method.WIRE && element != null ? element.size() : null;
        if (closer != null && element != null) {
            reason(Topic.CLOSER, "closer at the element's nominal " + element.name() + " (common practice, no source)");
        }
        return new Plan(
                job.binding(),
                pattern.id(),
                pattern.pitchName(),
                pattern.pitch(),
                element,
                axis,
                pattern.holeAlong(),
                pattern.holeAcross(),
                pattern.round(),
                row,
                looped ? row.holes().size() : 0,
                lifts,
                closer,
                clearMargin(),
                job.registration(),
                chosen.straddles(),
                chosen.measure(),
                skew,
                because);
    }

    private void reason(Topic topic, String text) {
        because.add(new Reason(topic, text));
    }

    private Length clearMargin() {
        Length own = job.clearMargin();
        if (own != null) {
            reason(Topic.MARGIN, "clear margin " + own.inMm() + " as the job says");
            return own;
        }
        boolean wire = pattern.method() == Method.WIRE;
        Length margin = wire
                ? pattern.pitchName().equals("3:1") ? CLEAR_3_1 : CLEAR_2_1
                : pattern.axis().plus(pattern.holeAcross().half()).plus(CLEAR_OF_HOLE);
        reason(
                Topic.MARGIN,
                "clear margin " + margin.inMm() + " at " + pattern.pitchName() + ": "
                        + (wire
                                ? "G. Markovits, \"Good Wire Work is a Balancing Act\", Printing News"
                                : "1/4 in beyond the holes (a college print shop's guide)"));
        return margin;
    }
}
