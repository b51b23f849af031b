package io.bindprep.report;

import io.bindprep.binding.Element;
import io.bindprep.binding.Gap;
import io.bindprep.binding.HoleRow;
import io.bindprep.binding.Measure;
import io.bindprep.binding.Plan;
import io.bindprep.binding.Reason;
import io.bindprep.binding.Skew;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** The plan as JSON. */
final class JsonPlan {
    private JsonPlan() {}

    static void put(ObjectNode node, Plan plan) {
        Element element = plan.element();
        HoleRow row = plan.row();
        node.put("method", Json.word(plan.method()));
        node.put("pattern", plan.pattern());
        node.put("pitchName", plan.pitchName());
        Json.mm(node, "pitchMm", plan.pitch());
        Json.mm(node, "elementMm", element == null ? null : element.size());
        node.put("elementName", element == null ? null : element.name());
        Json.mm(node, "edgeDistanceMm", plan.edgeDistance());
        Json.pair(node, "holeMm", plan.holeAlong().mm(), plan.holeAcross().mm());
        node.put("holeShape", plan.round() ? "round" : "rectangular");
        node.put("holes", row.holes().size());
        Json.mm(
                node,
                "firstHoleMm",
                row.holes().isEmpty() ? null : row.holes().get(0).axis());
        Json.integers(node, "pulledPins", row.pulledPins());
        Json.integers(node, "stuckPins", row.stuckPins());
        Json.mm(node, "leastWebMm", row.leastWeb());
        Json.mm(node, "turnedOffsetMm", row.offset());
        node.put("sameEndToGuide", plan.sameEndToGuide());
        gap(node, row.gap());
        skew(node, plan.skew());
        Json.integers(node, "lifts", plan.lifts());
        node.put("loops", plan.loops());
        Json.integers(node, "pieces", plan.pieces());
        Json.mm(node, "closerMm", plan.closer());
        Json.mm(node, "clearMarginMm", plan.clearMargin());
        Json.mm(node, "registrationMm", plan.registration());
        Json.mm(node, "punchedZoneMm", plan.punchedZone());
        Json.strings(
                node, "straddles", plan.straddles().stream().map(Element::name).toList());
        measure(node, plan.measure());
        Json.strings(node, "because", plan.because().stream().map(Reason::text).toList());
    }

    private static void gap(ObjectNode node, @Nullable Gap gap) {
        if (gap == null) {
            node.putNull("hangerGap");
            return;
        }
        ObjectNode one = node.putObject("hangerGap");
        Json.pair(one, "alongMm", gap.start().mm(), gap.end().mm());
        Json.integers(one, "pulledPins", gap.pulledPins());
        Json.integers(one, "stuckPins", gap.stuckPins());
        Gap.ThumbCut cut = gap.thumbCut();
        if (cut == null) {
            one.putNull("thumbCutMm");
        } else {
            Json.pair(one, "thumbCutMm", cut.width().mm(), cut.depth().mm());
        }
    }

    private static void skew(ObjectNode node, @Nullable Skew skew) {
        if (skew == null) {
            node.putNull("skew");
            return;
        }
        ObjectNode one = node.putObject("skew");
        Json.mm(one, "riseMm", skew.rise());
        Json.mm(one, "overMm", skew.over());
        one.put("degrees", Json.rounded(skew.degrees()));
        Json.mm(one, "strandMm", skew.strand());
        one.put("strandSource", skew.strandSource());
    }

    private static void measure(ObjectNode node, @Nullable Measure measure) {
        if (measure == null) {
            node.putNull("measure");
            return;
        }
        ObjectNode one = node.putObject("measure");
        Json.mm(one, "stackAtMostMm", measure.stackAtMost());
        one.put("stock", measure.stock());
        one.put("sheets", measure.sheets());
        Json.mm(one, "packAtMostMm", measure.packAtMost());
    }
}
