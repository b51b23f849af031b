package io.bindprep.binding;

import io.bindprep.block.Block;
import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.ElementSizes;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.Limits;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Plans the binding: pitch, element, hole row, pins, lifts, closer and margin, each with its reason.
 *
 * <p>An element that does not exist is no exception: the plan's element is null and its reasons say so. A setting that is
 * unknown, or a punch or pattern that the binding edge does not take, is.
 */
public final class Planner {
    private final Job job;
    private final Block block;
    private final Stack stack;
    private final Length edge;
    private final PunchChoice choice;
    private final Pattern pattern;
    private final Punch punch;
    private final MeasuredPins stand;
    private final List<Reason> because = new ArrayList<>();

    private Planner(Job job, Block block, Stack stack, Length edge, PunchChoice choice) {
        this.job = job;
        this.block = block;
        this.stack = stack;
        this.edge = edge;
        this.choice = choice;
        this.pattern = choice.pattern();
        this.punch = choice.punch();
        this.stand = new MeasuredPins(pattern, punch);
    }

    /**
     * The job's punch, else the generic one of its pitch or of a thin stack, over a binding edge, as if its pins stood where
     * its pattern says: what a test sheet is drawn for and readings are held against.
     *
     * @throws SettingException as {@link #plan(Job, Block, Stack, Length)}
     */
    public static PunchRow unmeasured(Job job, Length bindingEdgeLength) throws SettingException {
        Stack thin = new Stack(Length.ZERO, Length.ZERO, Length.ZERO, null, List.of());
        PunchChoice choice = PunchChoice.of(job, thin, bindingEdgeLength);
        Punch punch = choice.punch();
        List<DepthSetting> settings = DepthSettings.of(job, choice.pattern(), punch).stream()
                .filter(d -> job.depth() == null || DepthSettings.means(job.depth(), d))
                .toList();
        HoleRow row = new RowPlanner(job, choice.pattern(), punch.unmeasured(), bindingEdgeLength, reason -> {}).row();
        return new PunchRow(choice.pattern(), punch, settings, row);
    }

    /**
     * The plan on the job's punch, else on the pattern's generic one, without regard to the content.
     *
     * @param bindingEdgeLength the length of the binding edge of the trimmed leaf
     * @throws SettingException where pitch, punch or depth are unknown, do not go together, or do not fit the binding edge
     */
    public static Plan plan(Job job, Block block, Stack stack, Length bindingEdgeLength) throws SettingException {
        return settings(job, block, stack, bindingEdgeLength, PunchChoice.of(job, stack, bindingEdgeLength), List.of())
                .settleUnseen();
    }

    /**
     * The plan on a punch of the shop's own, without regard to the content.
     *
     * @throws SettingException as {@link #plan(Job, Block, Stack, Length)}
     */
    public static Plan plan(Job job, Block block, Stack stack, Length bindingEdgeLength, Punch punch)
            throws SettingException {
        return settings(job, block, stack, bindingEdgeLength, PunchChoice.of(job, punch), List.of())
                .settleUnseen();
    }

    /**
     * The plan of one volume of a book, at the depth that the whole book's pages were held against.
     *
     * @throws SettingException as {@link #plan(Job, Block, Stack, Length)}
     */
    public static Plan volume(Job job, Block block, Stack stack, Length bindingEdgeLength, Plan book)
            throws SettingException {
        PunchChoice choice = PunchChoice.of(job, stack, bindingEdgeLength);
        DepthSetting setting = book.depth().setting();
        return new Planner(job, block, stack, bindingEdgeLength, choice)
                .at(setting)
                .decided(
                        Objects.requireNonNull(book.depth().decidedBy(), "the book's depth was chosen"),
                        new Reason.DepthOfBook(setting));
    }

    /**
     * Every way to punch that is weighed, on the job's punch, else on the pattern's generic one.
     *
     * @throws SettingException as {@link #plan(Job, Block, Stack, Length)}
     */
    public static PlanChoices choices(Job job, Block block, Stack stack, Length bindingEdgeLength)
            throws SettingException {
        PunchChoice choice = PunchChoice.of(job, stack, bindingEdgeLength);
        return settings(
                job, block, stack, bindingEdgeLength, choice, others(job, block, stack, bindingEdgeLength, choice));
    }

    private static PlanChoices settings(
            Job job, Block block, Stack stack, Length edge, PunchChoice choice, List<Plan> others)
            throws SettingException {
        List<Plan> plans = new ArrayList<>();
        for (DepthSetting setting : DepthSettings.of(job, choice.pattern(), choice.punch())) {
            plans.add(new Planner(job, block, stack, edge, choice).at(setting));
        }
        Plan shallowest = plans.get(0);
        List<Elements.Entry> known = job.catalogue().elements().of(choice.pattern());
        Element element = shallowest.element() != null
                ? shallowest.element()
                : known.isEmpty() ? null : known.get(known.size() - 1).element();
        return new PlanChoices(
                job,
                bound(shallowest, job, stack, choice.punch()),
                choice.pattern().centre(),
                element == null ? null : element.size(),
                plans,
                others);
    }

    /** The stack by which the depth goes: where none takes the whole, no volume of it is thicker than the largest takes. */
    private static Stack bound(Plan shallowest, Job job, Stack stack, Punch punch) {
        Pattern pattern = job.catalogue().patterns().byId(shallowest.pattern()).orElseThrow();
        Sizing sizing = Sizing.of(job, pattern, shallowest.depth().outside(), punch.elements());
        List<Elements.Entry> known = sizing.known();
        if (shallowest.element() != null || known.isEmpty()) {
            return stack;
        }
        Length thin = stack.min().min(sizing.most(known.get(known.size() - 1)));
        return new Stack(thin, thin, thin, stack.weightG(), stack.because());
    }

    private static List<Plan> others(Job job, Block block, Stack stack, Length edge, PunchChoice choice) {
        Optional<PunchChoice> other = choice.other(job);
        List<Plan> plans = new ArrayList<>();
        try {
            if (other.isPresent()) {
                for (DepthSetting setting : other.get().punch().depths()) {
                    plans.add(new Planner(job, block, stack, edge, other.get()).at(setting));
                }
            }
        } catch (SettingException e) {
            // the job asks for what the other pitch does not have: there is nothing to compare with
            return List.of();
        }
        return plans;
    }

    private Plan at(DepthSetting setting) throws SettingException {
        because.add(choice.because());
        RowPlanner rows = new RowPlanner(job, pattern, punch, edge, because::add);
        HoleRow row = rows.row();
        Length punchingTolerance = PunchingTolerance.of(job, punch, stand.leftOpen(row), because::add);
        if (!row.holes().isEmpty()) {
            because.add(new Reason.TurnedOver(row.offset(), punchingTolerance));
        }
        Length centre = centre(setting, row);
        Length outside = centre.minus(pattern.holeAcross().half());
        Sizing sizing = Sizing.of(job, pattern, outside, punch.elements());
        ElementChoice chosen = new ElementPlanner(job, block, stack, sizing, because::add).choose();
        Element element = chosen.element();
        Skew skew = rows.skew(row, centre, punchingTolerance);
        Length turnsBelow = element == null ? null : Turning.limit(element.size(), sizing.decides(stack));
        return new Plan(
                Holes.of(pattern),
                punch.id(),
                chosen,
                centre,
                new Depth(setting, outside, turnsBelow, null),
                row,
                lifts(),
                new Closing(loops(row), closer(element), punch.elements()),
                new Margins(bindingMargin(centre), punchingTolerance),
                skew,
                because);
    }

    /** The centre that a setting gives, with the error that was measured in the middle of the row. */
    private Length centre(DepthSetting setting, HoleRow row) {
        Length centre = setting.centre().plus(stand.deeper(row));
        if (!centre.equals(setting.centre())) {
            because.add(new Reason.DepthMeasured(centre, setting.name()));
        }
        return centre;
    }

    private List<Integer> lifts() {
        List<Integer> lifts = LiftMaker.lifts(block.leaves(), punch::limit);
        because.add(new Reason.Lifts(lifts, LiftMaker.limits(block.leaves(), punch::limit), punch.source()));
        return lifts;
    }

    private int loops(HoleRow row) {
        boolean looped = job.binding() == Method.WIRE || job.binding() == Method.COMB;
        return looped ? row.holes().size() : 0;
    }

    private @Nullable Length closer(@Nullable Element element) {
        ElementSizes sizes = punch.elements();
        if (element != null && sizes != null) {
            because.add(new Reason.CloserTakes(punch.id(), sizes, sizes.takes(element.size())));
        }
        if (job.binding() != Method.WIRE || element == null) {
            return null;
        }
        because.add(new Reason.CloserNominal(element));
        return element.size();
    }

    private Length bindingMargin(Length centre) {
        Length own = job.bindingMargin();
        if (own != null) {
            because.add(new Reason.MarginAsked(own));
            return own;
        }
        boolean wire = pattern.method() == Method.WIRE;
        Limits limits = job.catalogue().limits();
        Limits.Limit limit = wire ? limits.wireMargin(pattern.pitchName()) : limits.marginBeyondHoles();
        Length margin =
                wire ? limit.length() : centre.plus(pattern.holeAcross().half()).plus(limit.length());
        because.add(new Reason.MarginOfPitch(margin, pattern.pitchName(), limit.source()));
        return margin;
    }
}
