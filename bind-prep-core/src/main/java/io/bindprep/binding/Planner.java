package io.bindprep.binding;

import io.bindprep.block.Block;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.Elements;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Job;
import io.bindprep.paper.Stack;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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
    private final List<String> because = new ArrayList<>();

    private Planner(Job job, Stack stack, PunchChoice choice) {
        this.job = job;
        this.stack = stack;
        this.pattern = choice.pattern();
        this.punch = choice.punch();
        because.add(choice.because());
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
        Element element = element();
        List<Element> straddles = straddles(element);
        HoleRow row = row(edge);
        List<Integer> lifts = LiftMaker.lifts(block.leaves(), punch.capacity().micrometres());
        because.add("lifts of " + lifts + " sheets: paper by thickness within "
                + punch.capacity().inMm() + " a lift, covers, boards and films apart (" + punch.source()
                + "); the machine's manual prevails");
        boolean looped = job.binding() == Method.WIRE || job.binding() == Method.COMB;
        Length closer = job.binding() == Method.WIRE && element != null ? element.size() : null;
        if (closer != null && element != null) {
            because.add("closer at the element's nominal " + element.name() + " (common practice, no source)");
        }
        return new Plan(
                job.binding(),
                pattern.id(),
                pattern.pitchName(),
                pattern.pitch(),
                element,
                pattern.axis(),
                pattern.holeAlong(),
                pattern.holeAcross(),
                pattern.round(),
                row,
                looped ? row.holes().size() : 0,
                lifts,
                closer,
                clearMargin(),
                job.registration(),
                straddles,
                because);
    }

    private @Nullable Element element() {
        Optional<Elements.Entry> found = job.catalogue().elements().smallest(pattern, stack.max(), job.clearance());
        List<Elements.Entry> known = job.catalogue().elements().of(pattern);
        if (known.isEmpty()) {
            because.add("no element: no sizes are known for " + pattern.id());
            return null;
        }
        boolean bySheets = known.get(0).sheets() != null;
        String need = bySheets
                ? "the stack of at most " + stack.max().inMm() + " is as thick as " + sheets() + " sheets of 20 lb bond"
                : "the stack of at most " + stack.max().inMm() + " with "
                        + job.clearance().inMm() + " of clearance needs "
                        + stack.max().plus(job.clearance()).inMm();
        if (found.isEmpty()) {
            Element largest = known.get(known.size() - 1).element();
            because.add("no element: " + need + ", the largest " + pattern.elements() + " is " + largest.name() + " ("
                    + largest.source() + ")");
            return null;
        }
        Element element = found.get().element();
        String size =
                bySheets ? found.get().sheets() + " sheets" : element.size().inMm();
        because.add("element " + element.name() + ": " + need + "; the smallest " + pattern.elements()
                + " that takes it (" + size + ", " + element.source() + ")");
        return element;
    }

    // sheets of 20 lb bond as thick as the stack, rounded up
    private int sheets() {
        int sheets = 0;
        while (Elements.bond(sheets).compareTo(stack.max()) < 0) {
            sheets++;
        }
        return sheets;
    }

    private List<Element> straddles(@Nullable Element thick) {
        Optional<Elements.Entry> thin = job.catalogue().elements().smallest(pattern, stack.min(), job.clearance());
        if (thin.isEmpty() || thin.get().element().equals(thick)) {
            return List.of();
        }
        Element small = thin.get().element();
        String end = "; measure a pack of the stock to settle it";
        if (thick == null) {
            because.add("at its thinnest of " + stack.min().inMm() + " the stack would go on " + small.name() + end);
            return List.of();
        }
        because.add("the likely range of " + stack.min().inMm() + " to "
                + stack.max().inMm() + " lies between " + small.name() + " and " + thick.name() + end);
        return List.of(small, thick);
    }

    private HoleRow row(Length edge) throws SettingException {
        // a size that only the document asks for is a finding about the document, not a wrong setting
        boolean asked = job.pitch() != null || job.punch() != null || job.trim() != null;
        if (edge.compareTo(punch.longestEdge()) > 0) {
            if (!asked) {
                return noRow(edge, "longer than the " + punch.longestEdge().inMm() + " that punches take");
            }
            throw new SettingException(
                    "punch",
                    punch.id(),
                    "the bound edge of " + edge.inMm() + " is longer than the punch " + punch.id() + " takes ("
                            + punch.longestEdge().inMm() + ")",
                    "bind at a shorter edge or name a punch that takes it",
                    List.of());
        }
        HoleRow row = RowMaker.count(pattern, edge, punch.leastWeb(), punch.pins()) == 0
                ? null
                : RowMaker.row(pattern, punch, edge);
        if (row == null
                || row.holes().isEmpty()
                || (!pattern.repeating() && row.holes().size() < punch.pins())) {
            if (!asked) {
                return noRow(edge, "too short for a hole with its web");
            }
            throw new SettingException(
                    job.pitch() == null && job.punch() != null ? "punch" : "pitch",
                    pattern.pitchName(),
                    pattern.id() + " does not fit a bound edge of " + edge.inMm() + " with "
                            + punch.leastWeb().inMm() + " of web at the ends on the punch " + punch.id(),
                    "choose another pitch, punch or bound edge",
                    fitting(edge));
        }
        because.add(row.holes().size() + " whole holes on " + edge.inMm() + ", the first "
                + row.holes().get(0).axis().inMm() + " from the end, "
                + row.leastWeb().inMm()
                + " of paper left at the ends, at least " + punch.leastWeb().inMm()
                + " asked for (by the punch; no standard gives it); "
                + (punch.firstPin() == null
                        ? "row centred by the side guide (XJDF 2.2, Appendix F)"
                        : "the guide of the punch is fixed"));
        pins(row);
        return row;
    }

    private HoleRow noRow(Length edge, String why) {
        because.add("no hole row: the bound edge of " + edge.inMm() + " is " + why);
        return new HoleRow(edge, List.of(), List.of(), List.of(), Length.ZERO);
    }

    private void pins(HoleRow row) {
        if (!row.pulledPins().isEmpty()) {
            because.add(
                    "pull pins " + row.pulledPins() + " counted from the side guide: on or beside the end of the sheet"
                            + " they would cut a hole open (Printing Impressions, Feb 2005); those off it by less than a pitch go"
                            + " too, should a sheet slip (our own guard, no source)");
        } else if (row.stuckPins().isEmpty()) {
            because.add("no pin needs pulling");
        }
        if (!row.stuckPins().isEmpty()) {
            because.add("pins " + row.stuckPins() + " of the punch " + punch.id()
                    + " cut a hole open or too near the end and cannot be pulled");
        }
    }

    private List<String> fitting(Length edge) {
        return job.catalogue().patterns().all().stream()
                .filter(p -> p.method() == job.binding())
                .filter(p -> {
                    Punch generic = job.catalogue().punches().generic(p);
                    return RowMaker.count(p, edge, generic.leastWeb(), generic.pins()) > 0;
                })
                .map(Pattern::id)
                .toList();
    }

    private Length clearMargin() {
        Length own = job.clearMargin();
        if (own != null) {
            because.add("clear margin " + own.inMm() + " as the job says");
            return own;
        }
        boolean wire = pattern.method() == Method.WIRE;
        Length margin = wire
                ? pattern.pitchName().equals("3:1") ? CLEAR_3_1 : CLEAR_2_1
                : pattern.axis().plus(pattern.holeAcross().half()).plus(CLEAR_OF_HOLE);
        because.add("clear margin " + margin.inMm() + " at " + pattern.pitchName() + ": "
                + (wire
                        ? "G. Markovits, \"Good Wire Work is a Balancing Act\", Printing News"
                        : "1/4 in beyond the holes (a college print shop's guide)"));
        return margin;
    }
}
