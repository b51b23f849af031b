package io.bindprep.binding;

import io.bindprep.catalogue.DepthSetting;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.ElementSizes;
import io.bindprep.catalogue.LiftLimit;
import io.bindprep.job.Clearances.Clearance;
import io.bindprep.paper.Stock;
import io.bindprep.unit.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reason of a decision: its kind and the values that were compared, without words. Its sentence in English
 * is made in {@code report.words}. Long, as a sealed interface is read best with all its kinds in one place.
 */
public sealed interface Reason {
    /** Decision that it belongs to. */
    Topic topic();

    /** Topics of the decisions, in their order. */
    enum Topic {
        PITCH,
        ELEMENT,
        DEPTH,
        ROW,
        PINS,
        HANGER,
        FEED,
        SKEW,
        LIFTS,
        CLOSER,
        MARGIN
    }

    /** Reasons of the pitch. */
    sealed interface OfPitch extends Reason {
        @Override
        default Topic topic() {
            return Topic.PITCH;
        }
    }

    /** The job names the pitch. */
    record PitchAsked(String pitch) implements OfPitch {}

    /** The job names the punch, which cuts one pitch. */
    record PitchOfPunch(String pitch, String punch) implements OfPitch {}

    /** The other pitch of the method, to compare with. */
    record PitchCompared(String pitch) implements OfPitch {}

    /**
     * Wire goes by the stack.
     *
     * @param thin whether the largest wire of 3:1 takes it
     */
    record PitchByStack(Length stack, boolean thin) implements OfPitch {}

    /** The pitch of combs. */
    record CombPitch() implements OfPitch {}

    /** The usual pitch of coils. */
    record CoilPitch() implements OfPitch {}

    /**
     * Rings go by the sheet.
     *
     * @param us whether the binding edge is that of a US sheet
     */
    record RingsByEdge(Length edge, boolean us) implements OfPitch {}

    /** Reasons of the element. */
    sealed interface OfElement extends Reason {
        @Override
        default Topic topic() {
            return Topic.ELEMENT;
        }
    }

    /** No sizes are known for a pattern. */
    record NoSizes(String pattern) implements OfElement {}

    /** Even the largest of a group of elements does not take the stack. */
    record TooThick(Need need, String group, Element largest) implements OfElement {}

    /**
     * The smallest of a group that takes the stack.
     *
     * @param sheets its capacity; null where it goes by its size
     */
    record Smallest(
            Element element,
            Need need,
            String group,
            @Nullable Integer sheets) implements OfElement {}

    /**
     * A pack to measure, as the likely range lies across two sizes.
     *
     * @param large the larger size; null where the smaller is the largest there is
     * @param source where the size of the pack comes from
     */
    record Straddled(
            Length thinnest,
            Length thickest,
            Element small,
            @Nullable Element large,
            PackMeasure measure,
            String source)
            implements OfElement {}

    /** Need of a stack for room in an element. */
    sealed interface Need {}

    /** Sheets of 20 lb bond as thick as the stack. */
    record InSheets(Length stack, int sheets) implements Need {}

    /**
     * Size of the stack with its clearance.
     *
     * @param atMost whether the stack is the thickest likely one; else the nominal one
     * @param rule the rule of the clearance; null where the job gives it as a length
     * @param outside paper outside the holes that a coil must turn round; null for other elements
     */
    record InSize(
            Length stack,
            boolean atMost,
            Length clearance,
            @Nullable Clearance rule,
            @Nullable Length outside) implements Need {}

    /** Reasons of the depth. */
    sealed interface OfDepth extends Reason {
        @Override
        default Topic topic() {
            return Topic.DEPTH;
        }
    }

    /** The holes were measured to lie elsewhere than a setting says. */
    record DepthMeasured(Length centre, String setting) implements OfDepth {}

    /** The setting of the whole book, for one of its volumes. */
    record DepthOfBook(DepthSetting setting) implements OfDepth {}

    /** The chosen setting. */
    record DepthChosen(DepthSetting setting, DepthGround ground) implements OfDepth {}

    /** Reasons of the hole row. */
    sealed interface OfRow extends Reason {
        @Override
        default Topic topic() {
            return Topic.ROW;
        }
    }

    /** The binding edge is longer than punches take. */
    record EdgeTooLong(Length edge, Length longest) implements OfRow {}

    /** The binding edge is too short for a hole. */
    record EdgeTooShort(Length edge) implements OfRow {}

    /**
     * The holes of the whole row.
     *
     * @param first the first centre
     * @param web paper left at the ends
     * @param minimumWeb what must be left
     * @param asked whether the job says so; else the punch
     * @param fixedGuide whether the side guide is fixed
     */
    record WholeRow(
            int holes, Length edge, Length first, Length web, Length minimumWeb, boolean asked, boolean fixedGuide)
            implements OfRow {}

    /** Pin 1 was measured to stand elsewhere; negative for too near to the fixed guide. */
    record FirstPinOff(Length off, Length tolerance) implements OfRow {}

    /** The row of pins was measured to be longer than its pattern says; negative for shorter. */
    record RowStretched(Length stretch, Length span, Length tolerance) implements OfRow {}

    /** Reasons of the pins. */
    sealed interface OfPins extends Reason {
        @Override
        default Topic topic() {
            return Topic.PINS;
        }
    }

    /** Pins on or beside the end of the sheet. */
    record EndPins(List<Integer> pins) implements OfPins {
        public EndPins {
            pins = List.copyOf(pins);
        }
    }

    /** Pins over the hanger's gap. */
    record GapPins(List<Integer> pins) implements OfPins {
        public GapPins {
            pins = List.copyOf(pins);
        }
    }

    /** No pin is in the way. */
    record NoPins() implements OfPins {}

    /**
     * Pins that are in the way and cannot be pulled.
     *
     * @param gap whether they stand over the hanger's gap; else at the end of the sheet
     */
    record FixedPins(List<Integer> pins, String punch, boolean gap) implements OfPins {
        public FixedPins {
            pins = List.copyOf(pins);
        }
    }

    /**
     * The gap of a hanger.
     *
     * @param beside paper on both sides of the thumb cut, where that makes the gap wider than asked for; else null
     * @param out number of holes that it takes out
     * @param runs holes before and after it
     */
    record HangerGap(Length width, @Nullable Length beside, int out, List<Integer> runs) implements Reason {
        public HangerGap {
            runs = List.copyOf(runs);
        }

        @Override
        public Topic topic() {
            return Topic.HANGER;
        }
    }

    /** Reasons of how sheets are fed. */
    sealed interface OfFeed extends Reason {
        @Override
        default Topic topic() {
            return Topic.FEED;
        }
    }

    /**
     * The side guide was measured to stand elsewhere than its scale says.
     *
     * @param first where the first hole would come by that scale
     * @param off how much too far from the guide holes come; negative for too near
     */
    record GuideOff(Length first, Length off, Length tolerance) implements OfFeed {}

    /** Distance of the holes of a leaf fed turned over from those of the others. */
    record TurnedOver(Length offset, Length punchingTolerance) implements OfFeed {
        /** Returns true if every leaf must go in with the same end. */
        public boolean matters() {
            return offset.compareTo(punchingTolerance) > 0;
        }
    }

    /** Reasons of the skew. */
    sealed interface OfSkew extends Reason {
        @Override
        default Topic topic() {
            return Topic.SKEW;
        }
    }

    /**
     * No bound of the skew is known.
     *
     * @param group the elements whose wire thickness is not known; null where there is no row that could slant
     */
    record SkewUnknown(@Nullable String group) implements OfSkew {}

    /**
     * Bound of the skew.
     *
     * @param through what the wire lets through the hole
     * @param outside paper outside the holes
     * @param slant how much deeper the punch was measured to cut the last hole than the first; negative for shallower
     */
    record MostSkew(
            Skew skew, Length holeAcross, Length through, Length outside, Length punchingTolerance, Length slant)
            implements OfSkew {}

    /** Lifts, within the limits of the kinds of stock that there are. */
    record Lifts(List<Integer> sheets, List<KindLimit> limits, String source) implements Reason {
        public Lifts {
            sheets = List.copyOf(sheets);
            limits = List.copyOf(limits);
        }

        @Override
        public Topic topic() {
            return Topic.LIFTS;
        }
    }

    /** Limit of the lifts of one kind of stock. */
    record KindLimit(Stock.Kind kind, LiftLimit limit) {}

    /** Reasons of the closer. */
    sealed interface OfCloser extends Reason {
        @Override
        default Topic topic() {
            return Topic.CLOSER;
        }
    }

    /** Sizes that the closer takes. */
    record CloserTakes(String punch, ElementSizes sizes, boolean taken) implements OfCloser {}

    /** The closer is set to the nominal size. */
    record CloserNominal(Element element) implements OfCloser {}

    /** Reasons of margin and tolerance. */
    sealed interface OfMargin extends Reason {
        @Override
        default Topic topic() {
            return Topic.MARGIN;
        }
    }

    /** The job gives the margin. */
    record MarginAsked(Length margin) implements OfMargin {}

    /** The margin of a pitch. */
    record MarginOfPitch(Length margin, String pitch, String source) implements OfMargin {}

    /** The punch's file gives the tolerance. */
    record ToleranceStated(Length tolerance, String punch) implements OfMargin {}

    /** The usual tolerance, as nobody measured the punch. */
    record ToleranceUsual(Length tolerance, String source) implements OfMargin {}

    /**
     * The tolerance of a punch that was measured.
     *
     * @param open what the measuring left open at worst
     * @param stated what the punch's file says on top of that; null for nothing
     * @param base ground of the tolerance where it is more than both
     * @param source of the usual one
     */
    record ToleranceMeasured(
            Length tolerance, Length open, @Nullable Length stated, Base base, String source) implements OfMargin {
        /** Grounds of the tolerance of a measured punch. */
        public enum Base {
            /** The measuring itself. */
            MEASURED,
            /** The job's own. */
            JOB,
            /** Our usual one. */
            USUAL
        }
    }
}
