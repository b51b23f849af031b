package io.bindprep.report.words;

import io.bindprep.binding.PackMeasure;
import io.bindprep.binding.Reason;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.LiftLimit;
import io.bindprep.job.Clearances.Clearance;
import io.bindprep.unit.Length;
import io.bindprep.wording.Measures;
import io.bindprep.wording.Terms;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** English of the reasons of a plan. */
final class BindingWords {
    private final Measures m;

    private BindingWords(Measures m) {
        this.m = m;
    }

    static String of(Reason reason, Measures measures) {
        return new BindingWords(measures).of(reason);
    }

    private String of(Reason reason) {
        return switch (reason.topic()) {
            case PITCH -> pitch((Reason.OfPitch) reason);
            case ELEMENT -> element((Reason.OfElement) reason);
            case DEPTH -> DepthWords.of((Reason.OfDepth) reason, m);
            case ROW -> row((Reason.OfRow) reason);
            case PINS -> pins((Reason.OfPins) reason);
            case HANGER -> hanger((Reason.HangerGap) reason);
            case FEED -> feed((Reason.OfFeed) reason);
            case SKEW -> skew((Reason.OfSkew) reason);
            case LIFTS -> lifts((Reason.Lifts) reason);
            case CLOSER -> closer((Reason.OfCloser) reason);
            case MARGIN -> margin((Reason.OfMargin) reason);
        };
    }

    private String pitch(Reason.OfPitch reason) {
        if (reason instanceof Reason.PitchAsked r) {
            return "pitch " + r.pitch() + " as the job says";
        }
        if (reason instanceof Reason.PitchOfPunch r) {
            return "pitch " + r.pitch() + ", which the punch " + r.punch() + " cuts";
        }
        if (reason instanceof Reason.PitchCompared r) {
            return "pitch " + r.pitch() + ", for comparison";
        }
        if (reason instanceof Reason.PitchByStack r) {
            return "pitch " + (r.thin() ? "3:1" : "2:1") + ": the largest 3:1 wire, 9/16 in, "
                    + (r.thin() ? "takes" : "does not take") + " the stack of " + m.thickness(r.stack())
                    + " (common practice, no source)";
        }
        if (reason instanceof Reason.CombPitch) {
            return "pitch 9/16 in: the comb of XJDF 2.2 F.9 and RFC 3806";
        }
        if (reason instanceof Reason.CoilPitch) {
            return "pitch 4:1: usual for coil (Printing Impressions, Feb 2005). Hole and centre are common practice,"
                    + " no source";
        }
        Reason.RingsByEdge r = (Reason.RingsByEdge) reason;
        return r.us()
                ? "three rings R3i-US (XJDF 2.2 F.3): the binding edge of " + m.size(r.edge())
                        + " is that of a US sheet"
                : "two rings R2m-ISO (ISO 838:1974): the binding edge of " + m.size(r.edge())
                        + " is not that of a US sheet";
    }

    private String element(Reason.OfElement reason) {
        if (reason instanceof Reason.NoSizes r) {
            return "no element: no sizes are known for " + r.pattern();
        }
        if (reason instanceof Reason.TooThick r) {
            return "no element: the largest " + kind(r.group()) + ", "
                    + r.largest().name() + ", takes less (" + r.largest().source() + "). " + need(r.need());
        }
        if (reason instanceof Reason.Smallest r) {
            Integer sheets = r.sheets();
            String size =
                    sheets != null ? sheets + " sheets" : m.size(r.element().size());
            return "element " + r.element().name() + ", the smallest " + kind(r.group()) + " that takes the stack ("
                    + size + ", " + r.element().source() + "). " + need(r.need());
        }
        Reason.Straddled r = (Reason.Straddled) reason;
        String small = r.small().name();
        Element large = r.large();
        PackMeasure measure = r.measure();
        return (large == null
                        ? "at its thinnest, " + m.thickness(r.thinnest()) + ", the stack goes on " + small
                        : "the stack, likely " + m.thicknesses(r.thinnest(), r.thickest()) + ", falls between " + small
                                + " and " + large.name())
                + ". Measure a pack of " + measure.sheets() + " sheets of " + measure.stock()
                + (measure.packAtMost().compareTo(Length.ZERO) > 0
                        ? ". At " + m.down(measure.packAtMost()) + " or less use " + small + ", which"
                        : ". " + small)
                + " takes a stack of " + m.down(measure.stackAtMost()) + " (" + r.source() + ")";
    }

    private String need(Reason.Need need) {
        if (need instanceof Reason.InSheets n) {
            return "The nominal stack of " + m.thickness(n.stack()) + " is as thick as " + n.sheets()
                    + " sheets of 20 lb bond";
        }
        Reason.InSize n = (Reason.InSize) need;
        Clearance rule = n.rule();
        Length outside = n.outside();
        return (n.atMost() ? "The stack of at most " : "The nominal stack of ")
                + m.thickness(n.stack()) + " needs "
                + m.up(n.stack().plus(n.clearance())) + " with " + m.exact(n.clearance()) + " of clearance ("
                + (rule == null ? "as the job says" : "rule \"" + rule.name() + "\": " + rule.source()) + ")"
                + (outside == null
                        ? ""
                        : ". The coil also turns round " + m.mark(outside) + " of paper outside the holes (derived)");
    }

    /** "wire 3:1", "ring mechanism": the unit that a group of rings is listed by says nothing to a reader. */
    private static String kind(String group) {
        return group.startsWith("rings") ? "ring mechanism" : group;
    }

    private String row(Reason.OfRow reason) {
        if (reason instanceof Reason.EdgeTooLong r) {
            return noRow(r.edge()) + "longer than the " + m.size(r.longest()) + " that punches take";
        }
        if (reason instanceof Reason.EdgeTooShort r) {
            return noRow(r.edge()) + "too short for a hole with its web";
        }
        if (reason instanceof Reason.WholeRow r) {
            return r.holes() + " whole holes on " + m.size(r.edge()) + ", the first "
                    + m.mark(r.first()) + " from the end. Paper left at the ends: " + m.beside(r.web(), r.minimumWeb())
                    + ". Minimum, set by the " + (r.asked() ? "job" : "punch") + ": "
                    + m.beside(r.minimumWeb(), r.web()) + " (no standard gives it). "
                    + (r.fixedGuide()
                            ? "The punch's side guide is fixed"
                            : "The side guide centres the row (XJDF 2.2, Appendix F)");
        }
        if (reason instanceof Reason.FirstPinOff r) {
            return "pin 1 stands " + m.fine(r.off().abs())
                    + (positive(r.off()) ? " too far from" : " too near to")
                    + " the fixed guide, as measured to " + m.fine(r.tolerance());
        }
        Reason.RowStretched r = (Reason.RowStretched) reason;
        return "the row of pins was measured " + m.fine(r.stretch().abs())
                + (positive(r.stretch()) ? " longer" : " shorter") + " than the "
                + m.size(r.span())
                + " of its pattern, to " + m.fine(r.tolerance()) + ", which grows from hole to hole";
    }

    private String noRow(Length edge) {
        return "no hole row: the binding edge of " + m.size(edge) + " is ";
    }

    private static boolean positive(Length length) {
        return length.compareTo(Length.ZERO) > 0;
    }

    private static String pins(Reason.OfPins reason) {
        if (reason instanceof Reason.EndPins r) {
            return "pull " + pinsOf(r.pins()) + ", counted from the side guide. At the end of the leaf"
                    + " they would cut an open hole (Printing Impressions, Feb 2005). A pin less than a pitch off the end"
                    + " goes too, in case a leaf slips (our own guard, no source)";
        }
        if (reason instanceof Reason.GapPins r) {
            return "pull " + pinsOf(r.pins()) + " too, for the hanger's gap";
        }
        if (reason instanceof Reason.FixedPins r) {
            return pinsOf(r.pins()) + " of the punch " + r.punch()
                    + (r.pins().size() == 1 ? " cuts" : " cut")
                    + (r.gap() ? " holes into the hanger's gap" : " a hole open or too near the end")
                    + " and cannot be pulled";
        }
        return "no pin to pull";
    }

    private String hanger(Reason.HangerGap r) {
        Length beside = r.beside();
        return "hanger: no hole within " + m.size(r.width()) + " in the middle of the edge ("
                + (beside == null
                        ? "the job's gap"
                        : "the thumb cut with " + m.size(beside) + " of paper on both sides")
                + "). It takes " + r.out()
                + " holes out. Each goes with its mirror image, so that the row stays symmetric."
                + " The element goes on in two pieces, for " + r.runs().get(0) + " and "
                + r.runs().get(1) + " holes";
    }

    private String feed(Reason.OfFeed reason) {
        if (reason instanceof Reason.GuideOff r) {
            return "set the side guide's own scale to "
                    + m.mark(r.first())
                    + " for the first hole. It was measured to place holes "
                    + m.fine(r.off().abs())
                    + (positive(r.off()) ? " too far from it" : " too near to it") + ", to within "
                    + m.fine(r.tolerance());
        }
        Reason.TurnedOver r = (Reason.TurnedOver) reason;
        return (r.matters() ? "the same end to the side guide on every lift" : "either end may go to the side guide")
                + ". A leaf fed turned over has its holes "
                + m.beside(r.offset(), r.punchingTolerance()) + " off the others, "
                + (r.matters() ? "beyond" : "within") + " the " + Terms.PUNCHING_TOLERANCE + " of "
                + m.beside(r.punchingTolerance(), r.offset());
    }

    private String skew(Reason.OfSkew reason) {
        if (reason instanceof Reason.SkewUnknown r) {
            return "maximum skew: not known, as "
                    + (r.group() == null
                            ? "there is no row that could slant"
                            : "no wire thickness is known for " + r.group());
        }
        Reason.MostSkew r = (Reason.MostSkew) reason;
        String wire = m.mark(r.skew().wireThickness()) + " thick (" + r.skew().wireThicknessSource() + ")";
        String hole = m.size(r.holeAcross());
        return "maximum skew " + m.down(r.skew().rise()) + " over the "
                + m.size(r.skew().over())
                + " from first to last hole. "
                + (r.through().compareTo(r.outside()) <= 0
                        ? "The element, " + wire + ", has no more room in the hole of " + hole
                        : "The paper outside the holes is no wider, and an open hole holds nothing. The element, "
                                + wire + ", has " + m.mark(r.through()) + " of room in the hole of " + hole)
                + ". Print was checked for holes " + m.mark(r.punchingTolerance())
                + " off their place. A greater skew may reach print" + slant(r.slant());
    }

    private String slant(Length slant) {
        return slant.equals(Length.ZERO)
                ? ""
                : ". The punch itself takes " + m.fine(slant.abs()) + " of the skew: its last hole was measured "
                        + (positive(slant) ? "deeper" : "shallower") + " than its first";
    }

    private static String pinsOf(List<Integer> pins) {
        return (pins.size() == 1 ? "pin " : "pins ") + listed(pins);
    }

    private static String listed(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private String lifts(Reason.Lifts r) {
        return "lifts of "
                + String.join(
                        ", ",
                        StepWords.alike(r.sheets().stream().map(String::valueOf).toList()))
                + (r.sheets().equals(List.of(1)) ? " leaf" : " leaves")
                + ", in order. Covers are punched apart, and so are paper, board and film. At most "
                + r.limits().stream().map(this::limit).collect(Collectors.joining(", ")) + " (" + r.source()
                + "). The machine's manual prevails";
    }

    /** "1.5 mm and 2 sheets of board". */
    private String limit(Reason.KindLimit of) {
        LiftLimit limit = of.limit();
        return m.mark(limit.thickness()) + (limit.sheets() == null ? "" : " and " + limit.sheets() + " sheets") + " of "
                + of.kind().name().toLowerCase(Locale.ROOT);
    }

    private static String closer(Reason.OfCloser reason) {
        if (reason instanceof Reason.CloserTakes r) {
            return "the closer of the punch " + r.punch() + " takes "
                    + r.sizes().text() + (r.taken() ? "" : ", but not this element");
        }
        Reason.CloserNominal r = (Reason.CloserNominal) reason;
        return "closer at the element's nominal " + r.element().name() + " (common practice, no source)";
    }

    private String margin(Reason.OfMargin reason) {
        if (reason instanceof Reason.MarginAsked r) {
            return Terms.BINDING_MARGIN + " " + m.mark(r.margin()) + " as the job says";
        }
        if (reason instanceof Reason.MarginOfPitch r) {
            return Terms.BINDING_MARGIN + " " + m.mark(r.margin()) + " at " + r.pitch() + " (" + r.source() + ")";
        }
        if (reason instanceof Reason.ToleranceStated r) {
            return tolerance(r.tolerance()) + ", as measured on the punch " + r.punch();
        }
        if (reason instanceof Reason.ToleranceUsual r) {
            return tolerance(r.tolerance()) + " either way: the punch was not measured (" + r.source() + ")";
        }
        Reason.ToleranceMeasured r = (Reason.ToleranceMeasured) reason;
        Length stated = r.stated();
        return tolerance(r.tolerance())
                + switch (r.base()) {
                    case MEASURED -> ": ";
                    case JOB -> " as the job says, more than ";
                    case USUAL -> " (" + r.source() + "), more than ";
                }
                + "the " + m.fine(r.open()) + " that calibration leaves open at worst"
                + (stated == null ? "" : ", plus the " + m.fine(stated) + " of the punch's file");
    }

    private String tolerance(Length tolerance) {
        return Terms.PUNCHING_TOLERANCE + " " + m.mark(tolerance);
    }
}
