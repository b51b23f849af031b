package io.bindprep.report.words;

import io.bindprep.binding.PackMeasure;
import io.bindprep.binding.Reason;
import io.bindprep.catalogue.Element;
import io.bindprep.catalogue.LiftLimit;
import io.bindprep.job.Clearances.Clearance;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** English of the reasons of a plan. */
final class BindingWords {
    private BindingWords() {}

    static String of(Reason reason) {
        return switch (reason.topic()) {
            case PITCH -> pitch((Reason.OfPitch) reason);
            case ELEMENT -> element((Reason.OfElement) reason);
            case DEPTH -> DepthWords.of((Reason.OfDepth) reason);
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

    private static String pitch(Reason.OfPitch reason) {
        if (reason instanceof Reason.PitchAsked r) {
            return "pitch " + r.pitch() + " as the job says";
        }
        if (reason instanceof Reason.PitchOfPunch r) {
            return "pitch " + r.pitch() + ", which the punch " + r.punch() + " cuts";
        }
        if (reason instanceof Reason.PitchCompared r) {
            return "pitch " + r.pitch() + " to compare with";
        }
        if (reason instanceof Reason.PitchByStack r) {
            return "pitch " + (r.thin() ? "3:1" : "2:1") + ": the stack of "
                    + r.stack().inMm()
                    + (r.thin() ? " goes" : " does not go")
                    + " on the largest 3:1 wire of 9/16 in (common practice, no source)";
        }
        if (reason instanceof Reason.CombPitch) {
            return "pitch 9/16 in: the comb of XJDF 2.2 F.9 and RFC 3806";
        }
        if (reason instanceof Reason.CoilPitch) {
            return "pitch 4:1: usual for coil (Printing Impressions, Feb 2005); hole and centre are common practice,"
                    + " no source";
        }
        Reason.RingsByEdge r = (Reason.RingsByEdge) reason;
        return r.us()
                ? "three rings R3i-US (XJDF 2.2 F.3): the binding edge of "
                        + r.edge().inMm() + " is that of a US sheet"
                : "two rings R2m-ISO (ISO 838:1974): the binding edge of "
                        + r.edge().inMm() + " is not that of a US sheet";
    }

    private static String element(Reason.OfElement reason) {
        if (reason instanceof Reason.NoSizes r) {
            return "no element: no sizes are known for " + r.pattern();
        }
        if (reason instanceof Reason.TooThick r) {
            return "no element: " + need(r.need()) + ", the largest " + r.group() + " is "
                    + r.largest().name() + " (" + r.largest().source() + ")";
        }
        if (reason instanceof Reason.Smallest r) {
            Integer sheets = r.sheets();
            String size =
                    sheets != null ? sheets + " sheets" : r.element().size().inMm();
            return "element " + r.element().name() + ": " + need(r.need()) + "; the smallest " + r.group()
                    + " that takes it (" + size + ", " + r.element().source() + ")";
        }
        Reason.Straddled r = (Reason.Straddled) reason;
        String small = r.small().name();
        Element large = r.large();
        PackMeasure measure = r.measure();
        return (large == null
                        ? "at its thinnest of " + r.thinnest().inMm() + " the stack would go on " + small
                        : "the likely range of " + r.thinnest().inMm() + " to "
                                + r.thickest().inMm() + " lies between " + small + " and " + large.name())
                + ": up to " + measure.stackAtMost().inMm() + " of stack " + small + " does; measure a pack of "
                + measure.sheets() + " sheets of " + measure.stock()
                + (measure.packAtMost().compareTo(Length.ZERO) > 0
                        ? ", which decides at " + measure.packAtMost().inMm()
                        : "")
                + " (" + r.source() + ")";
    }

    private static String need(Reason.Need need) {
        if (need instanceof Reason.InSheets n) {
            return "the nominal stack of " + n.stack().inMm() + " is as thick as " + n.sheets()
                    + " sheets of 20 lb bond";
        }
        Reason.InSize n = (Reason.InSize) need;
        Clearance rule = n.rule();
        Length outside = n.outside();
        return (n.atMost() ? "the stack of at most " : "the nominal stack of ")
                + n.stack().inMm() + " with "
                + n.clearance().inMm() + " of clearance ("
                + (rule == null ? "as the job says" : "rule \"" + rule.name() + "\": " + rule.source()) + ") needs "
                + n.stack().plus(n.clearance()).inMm()
                + (outside == null
                        ? ""
                        : ", and the coil turns round the stack's edge with " + outside.inMm()
                                + " of paper outside the holes (derived)");
    }

    private static String row(Reason.OfRow reason) {
        if (reason instanceof Reason.EdgeTooLong r) {
            return noRow(r.edge()) + "longer than the " + r.longest().inMm() + " that punches take";
        }
        if (reason instanceof Reason.EdgeTooShort r) {
            return noRow(r.edge()) + "too short for a hole with its web";
        }
        if (reason instanceof Reason.WholeRow r) {
            return r.holes() + " whole holes on " + r.edge().inMm() + ", the first "
                    + r.first().inMm() + " from the end, " + r.web().inMm() + " of paper left at the ends, at least "
                    + r.minimumWeb().inMm() + " asked for (by the " + (r.asked() ? "job" : "punch")
                    + "; no standard gives it); "
                    + (r.fixedGuide()
                            ? "the guide of the punch is fixed"
                            : "row centred by the side guide (XJDF 2.2, Appendix F)");
        }
        if (reason instanceof Reason.FirstPinOff r) {
            return "pin 1 stands " + r.off().abs().inMm()
                    + (positive(r.off()) ? " too far from" : " too near to")
                    + " the fixed guide, as measured to " + r.tolerance().inMm();
        }
        Reason.RowStretched r = (Reason.RowStretched) reason;
        return "the row of pins was measured " + r.stretch().abs().inMm()
                + (positive(r.stretch()) ? " longer" : " shorter") + " than the "
                + r.span().inMm()
                + " of its pattern, to " + r.tolerance().inMm() + ", which grows from hole to hole";
    }

    private static String noRow(Length edge) {
        return "no hole row: the binding edge of " + edge.inMm() + " is ";
    }

    private static boolean positive(Length length) {
        return length.compareTo(Length.ZERO) > 0;
    }

    private static String pins(Reason.OfPins reason) {
        if (reason instanceof Reason.EndPins r) {
            return "pull " + pinsOf(r.pins()) + " counted from the side guide: on or beside the end of the sheet"
                    + " they would cut a hole open (Printing Impressions, Feb 2005); those off it by less than a pitch go"
                    + " too, should a sheet slip (our own guard, no source)";
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
        return "no pin needs pulling";
    }

    private static String hanger(Reason.HangerGap r) {
        Length beside = r.beside();
        return "hanger: no hole within " + r.width().inMm() + " in the middle of the edge ("
                + (beside == null ? "the job's gap" : "the thumb cut with " + beside.inMm() + " of paper on both sides")
                + "), which takes " + r.out()
                + " holes out; a hole is taken out with its mirror image, so that the row stays as symmetric as it was;"
                + " the element goes on in two pieces, of " + r.runs().get(0) + " and "
                + r.runs().get(1);
    }

    private static String feed(Reason.OfFeed reason) {
        if (reason instanceof Reason.GuideOff r) {
            return "set the side guide so that the first hole would come to "
                    + r.first().inMm()
                    + " by the guide's own scale: it was measured to bring holes "
                    + r.off().abs().inMm()
                    + (positive(r.off()) ? " too far from it" : " too near to it") + ", to "
                    + r.tolerance().inMm();
        }
        Reason.TurnedOver r = (Reason.TurnedOver) reason;
        return (r.matters() ? "the same end to the side guide on every lift" : "either end may go to the side guide")
                + ": the holes of a leaf fed turned over would lie "
                + r.offset().inMm() + " off the others, "
                + (r.matters() ? "beyond" : "within") + " the punching tolerance of "
                + r.punchingTolerance().inMm();
    }

    private static String skew(Reason.OfSkew reason) {
        if (reason instanceof Reason.SkewUnknown r) {
            return "how skewed a sheet may sit is not known: "
                    + (r.group() == null
                            ? "there is no row that could slant"
                            : "the wire thickness is not known for " + r.group());
        }
        Reason.MostSkew r = (Reason.MostSkew) reason;
        String wire = r.skew().wireThickness().inMm() + " (" + r.skew().wireThicknessSource() + ")";
        String hole = r.holeAcross().inMm();
        return "a sheet may sit skewed by " + r.skew().rise().inMm() + " over the "
                + r.skew().over().inMm() + " from first to last hole: "
                + (r.through().compareTo(r.outside()) <= 0
                        ? "the hole of " + hole + " less a wire of " + wire + " lets no more through"
                        : "the paper outside the holes is no wider, and one cut open holds nothing; the wire of "
                                + wire + " would pass the hole of " + hole + " up to "
                                + r.through().inMm())
                + "; print was held against holes " + r.punchingTolerance().inMm()
                + " off their place, so a greater skew may reach it" + slant(r.slant());
    }

    private static String slant(Length slant) {
        return slant.equals(Length.ZERO)
                ? ""
                : "; of this the punch itself takes " + slant.abs().inMm() + ", by which its last hole was measured "
                        + (positive(slant) ? "deeper" : "shallower") + " than its first";
    }

    private static String pinsOf(List<Integer> pins) {
        return (pins.size() == 1 ? "pin " : "pins ") + listed(pins);
    }

    private static String listed(List<Integer> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static String lifts(Reason.Lifts r) {
        return "lifts of " + listed(r.sheets())
                + " sheets: in order, covers by themselves, paper, board and film apart, within "
                + r.limits().stream().map(BindingWords::limit).collect(Collectors.joining(", ")) + " (" + r.source()
                + "); the machine's manual prevails";
    }

    /** "1.5 mm and 2 sheets of board". */
    private static String limit(Reason.KindLimit of) {
        LiftLimit limit = of.limit();
        return limit.thickness().inMm() + (limit.sheets() == null ? "" : " and " + limit.sheets() + " sheets") + " of "
                + of.kind().name().toLowerCase(Locale.ROOT);
    }

    private static String closer(Reason.OfCloser reason) {
        if (reason instanceof Reason.CloserTakes r) {
            return "the closer of the punch " + r.punch() + " takes "
                    + r.sizes().text() + (r.taken() ? "" : ", which the element is not");
        }
        Reason.CloserNominal r = (Reason.CloserNominal) reason;
        return "closer at the element's nominal " + r.element().name() + " (common practice, no source)";
    }

    private static String margin(Reason.OfMargin reason) {
        if (reason instanceof Reason.MarginAsked r) {
            return "binding margin " + r.margin().inMm() + " as the job says";
        }
        if (reason instanceof Reason.MarginOfPitch r) {
            return "binding margin " + r.margin().inMm() + " at " + r.pitch() + ": " + r.source();
        }
        if (reason instanceof Reason.ToleranceStated r) {
            return tolerance(r.tolerance()) + " as the punch " + r.punch() + " was measured";
        }
        if (reason instanceof Reason.ToleranceUsual r) {
            return tolerance(r.tolerance()) + " either way, as nobody measured the punch (" + r.source() + ")";
        }
        Reason.ToleranceMeasured r = (Reason.ToleranceMeasured) reason;
        Length stated = r.stated();
        return tolerance(r.tolerance())
                + switch (r.base()) {
                    case MEASURED -> ": ";
                    case JOB -> " as the job says, more than ";
                    case USUAL -> " (" + r.source() + "), more than ";
                }
                + "the " + r.open().inMm() + " that the measuring of the punch leaves open at worst"
                + (stated == null ? "" : " on top of the " + stated.inMm() + " of its file");
    }

    private static String tolerance(Length tolerance) {
        return "punching tolerance " + tolerance.inMm();
    }
}
