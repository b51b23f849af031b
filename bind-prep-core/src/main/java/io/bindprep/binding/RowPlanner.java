package io.bindprep.binding;

import io.bindprep.binding.Reason.Topic;
import io.bindprep.catalogue.Method;
import io.bindprep.catalogue.Pattern;
import io.bindprep.catalogue.Punch;
import io.bindprep.job.Hanger;
import io.bindprep.job.Job;
import io.bindprep.problem.SettingException;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Objects;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/** Plans the hole row: how many holes, where, which pins to pull, how a sheet must be fed, how skewed it may sit. */
final class RowPlanner {
    // a hanger hooks into the loops on both sides of its gap; our own floor, no source
    private static final int LEAST_RUN = 2;

    private final Job job;
    private final Pattern pattern;
    private final Punch punch;
    private final Length edge;
    private final Length minimumWeb;
    private final BiConsumer<Topic, String> because;

    RowPlanner(Job job, Pattern pattern, Punch punch, Length edge, BiConsumer<Topic, String> because) {
        this.job = job;
        this.pattern = pattern;
        this.punch = punch;
        this.edge = edge;
        this.because = because;
        Length asked = Objects.requireNonNullElse(job.minimumWeb(), punch.minimumWeb());
        // a hole that touches the end is cut open, whatever little is asked for
        this.minimumWeb = asked.max(new Length(1));
    }

    HoleRow row() throws SettingException {
        // a size that only the document asks for is a finding about the document, not a wrong setting
        boolean asked = job.pitch() != null || job.punch() != null || job.trim() != null;
        if (edge.compareTo(punch.longestEdge()) > 0) {
            if (!asked) {
                return noRow("longer than the " + punch.longestEdge().inMm() + " that punches take");
            }
            throw new SettingException(
                    "punch",
                    punch.id(),
                    "the binding edge of " + edge.inMm() + " is longer than the punch " + punch.id() + " takes ("
                            + punch.longestEdge().inMm() + ")",
                    "bind at a shorter edge or name a punch that takes it",
                    List.of());
        }
        HoleRow whole = new RowMaker(pattern, punch, edge, minimumWeb, null).row();
        if (whole.holes().isEmpty() || (!pattern.repeating() && whole.holes().size() < punch.pins())) {
            if (!asked && job.minimumWeb() == null) {
                return noRow("too short for a hole with its web");
            }
            throw misfit();
        }
        because.accept(
                Topic.ROW,
                whole.holes().size() + " whole holes on " + edge.inMm() + ", the first "
                        + whole.holes().get(0).centre().inMm() + " from the end, "
                        + whole.minimumWeb().inMm()
                        + " of paper left at the ends, at least " + minimumWeb.inMm() + " asked for (by the "
                        + (job.minimumWeb() == null ? "punch" : "job") + "; no standard gives it); "
                        + (punch.firstPin() == null
                                ? "row centred by the side guide (XJDF 2.2, Appendix F)"
                                : "the guide of the punch is fixed"));
        Hanger hanger = job.hanger();
        HoleRow row = hanger == null ? whole : hung(hanger, whole);
        pins(row);
        measured(row);
        return row;
    }

    private HoleRow hung(Hanger hanger, HoleRow whole) throws SettingException {
        if (job.binding() == Method.RINGS) {
            throw new SettingException(
                    "hanger",
                    hanger.gap().inMm(),
                    "a hanger sits in a gap between loops, which ring holes do not have",
                    "leave hanger out, or bind by wire, coil or comb",
                    List.of());
        }
        HoleRow row = new RowMaker(pattern, punch, edge, minimumWeb, hanger).row();
        Length width = RowMaker.width(hanger, minimumWeb);
        if (row.runs().stream().anyMatch(n -> n < LEAST_RUN)) {
            throw new SettingException(
                    "hanger",
                    hanger.gap().inMm(),
                    "a gap of " + width.inMm() + " in a binding edge of " + edge.inMm() + " leaves fewer than "
                            + LEAST_RUN + " holes on a side",
                    "make the gap smaller",
                    List.of());
        }
        boolean wider = width.compareTo(hanger.gap()) > 0;
        because.accept(
                Topic.HANGER,
                "hanger: no hole within " + width.inMm() + " in the middle of the edge ("
                        + (wider
                                ? "the thumb cut with " + minimumWeb.inMm() + " of paper on both sides"
                                : "the job's gap")
                        + "), which takes "
                        + (whole.holes().size() - row.holes().size())
                        + " holes out; a hole is taken out with its mirror image, so that the row stays as symmetric as it was;"
                        + " the element goes on in two pieces, of " + row.runs().get(0) + " and "
                        + row.runs().get(1));
        return row;
    }

    private HoleRow noRow(String why) {
        because.accept(Topic.ROW, "no hole row: the binding edge of " + edge.inMm() + " is " + why);
        return new HoleRow(edge, List.of(), List.of(), List.of(), Length.ZERO);
    }

    private SettingException misfit() {
        String key = job.minimumWeb() != null
                ? "minimum-web"
                : job.pitch() == null && job.punch() != null ? "punch" : "pitch";
        return new SettingException(
                key,
                job.minimumWeb() != null ? minimumWeb.inMm() : pattern.pitchName(),
                pattern.id() + " does not fit a binding edge of " + edge.inMm() + " with " + minimumWeb.inMm()
                        + " of web at the ends on the punch " + punch.id(),
                "choose another pitch, punch" + (job.minimumWeb() == null ? "" : ", minimum-web") + " or binding edge",
                key.equals("minimum-web") ? List.of() : fitting());
    }

    private void pins(HoleRow row) {
        Gap gap = row.gap();
        List<Integer> ends = row.pulledPins().stream()
                .filter(pin -> gap == null || !gap.pulledPins().contains(pin))
                .toList();
        if (!ends.isEmpty()) {
            because.accept(
                    Topic.PINS,
                    "pull pins " + ends + " counted from the side guide: on or beside the end of the sheet"
                            + " they would cut a hole open (Printing Impressions, Feb 2005); those off it by less than a pitch go"
                            + " too, should a sheet slip (our own guard, no source)");
        }
        if (gap != null && !gap.pulledPins().isEmpty()) {
            because.accept(Topic.PINS, "pull pins " + gap.pulledPins() + " too, for the hanger's gap");
        }
        if (row.pulledPins().isEmpty() && row.fixedPins().isEmpty()) {
            because.accept(Topic.PINS, "no pin needs pulling");
        }
        fixed(row.fixedPins(), "cut a hole open or too near the end");
        fixed(gap == null ? List.of() : gap.fixedPins(), "cut holes into the hanger's gap");
    }

    private void fixed(List<Integer> pins, String what) {
        if (!pins.isEmpty()) {
            because.accept(
                    Topic.PINS, "pins " + pins + " of the punch " + punch.id() + " " + what + " and cannot be pulled");
        }
    }

    private void measured(HoleRow row) {
        MeasuredPins stand = new MeasuredPins(pattern, punch);
        Length off = row.guideOff();
        if (!off.equals(Length.ZERO)) {
            because.accept(
                    Topic.FEED,
                    "set the side guide so that the first hole would come to "
                            + row.holes().get(0).centre().minus(off).inMm()
                            + " by the guide's own scale: it was measured to bring holes "
                            + off.abs().inMm()
                            + (off.compareTo(Length.ZERO) > 0 ? " too far from it" : " too near to it")
                            + ", to " + stand.side().tolerance().inMm());
        } else if (!stand.side().value().equals(Length.ZERO)) {
            Length side = stand.side().value();
            because.accept(
                    Topic.ROW,
                    "pin 1 stands " + side.abs().inMm()
                            + (side.compareTo(Length.ZERO) > 0 ? " too far from" : " too near to")
                            + " the fixed guide, as measured to "
                            + stand.side().tolerance().inMm());
        }
        Length stretch = stand.pitch().value();
        if (!stretch.equals(Length.ZERO)) {
            because.accept(
                    Topic.ROW,
                    "the row of pins was measured " + stretch.abs().inMm()
                            + (stretch.compareTo(Length.ZERO) > 0 ? " longer" : " shorter") + " than the "
                            + pattern.span(punch.pins()).inMm() + " of its pattern, to "
                            + stand.pitch().tolerance().inMm() + ", which grows from hole to hole");
        }
    }

    /** Way that a sheet must be fed. */
    void feed(HoleRow row, Length punchingTolerance) {
        Length off = row.offset();
        boolean matters = off.compareTo(punchingTolerance) > 0;
        because.accept(
                Topic.FEED,
                (matters ? "the same end to the side guide on every lift" : "either end may go to the side guide")
                        + ": the holes of a leaf fed turned over would lie "
                        + off.inMm() + " off the others, " + (matters ? "beyond" : "within")
                        + " the punching tolerance of "
                        + punchingTolerance.inMm());
    }

    /** Skew that a sheet may have; null where the wire thickness is not known or one hole cannot slant. */
    @Nullable
    Skew skew(HoleRow row, Length centre, Length punchingTolerance) {
        WireThicknesses.WireThickness wireThickness =
                WireThicknesses.of(pattern).orElse(null);
        if (wireThickness == null || row.holes().size() < 2) {
            because.accept(
                    Topic.SKEW,
                    "how skewed a sheet may sit is not known: "
                            + (wireThickness == null
                                    ? "the wire thickness is not known for " + pattern.elements()
                                    : "there is no row that could slant"));
            return null;
        }
        Length over = row.holes()
                .get(row.holes().size() - 1)
                .centre()
                .minus(row.holes().get(0).centre());
        Length through = pattern.holeAcross().minus(wireThickness.thickness());
        Length outside = centre.minus(pattern.holeAcross().half());
        Length rise = through.min(outside).max(Length.ZERO);
        because.accept(
                Topic.SKEW,
                "a sheet may sit skewed by " + rise.inMm() + " over the " + over.inMm() + " from first to last hole: "
                        + (through.compareTo(outside) <= 0
                                ? "the hole of " + pattern.holeAcross().inMm() + " less a wire of "
                                        + wireThickness.thickness().inMm() + " (" + wireThickness.source()
                                        + ") lets no more through"
                                : "the paper outside the holes is no wider, and one cut open holds nothing; the wire of "
                                        + wireThickness.thickness().inMm() + " (" + wireThickness.source()
                                        + ") would pass the hole of "
                                        + pattern.holeAcross().inMm() + " up to " + through.inMm())
                        + "; print was held against holes " + punchingTolerance.inMm()
                        + " off their place, so a greater skew may reach it" + own(row));
        return new Skew(rise, over, wireThickness.thickness(), wireThickness.source());
    }

    private String own(HoleRow row) {
        Length slant = row.slant();
        return slant.equals(Length.ZERO)
                ? ""
                : "; of this the punch itself takes " + slant.abs().inMm() + ", by which its last hole was measured "
                        + (slant.compareTo(Length.ZERO) > 0 ? "deeper" : "shallower") + " than its first";
    }

    private List<String> fitting() {
        return job.catalogue().patterns().all().stream()
                .filter(p -> p.method() == job.binding())
                .filter(p -> {
                    Punch generic = job.catalogue().punches().generic(p);
                    return RowMaker.count(p, edge, generic.minimumWeb(), generic.pins()) > 0;
                })
                .map(Pattern::id)
                .toList();
    }
}
