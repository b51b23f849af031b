package io.bindprep.report;

import io.bindprep.binding.HoleRow;
import io.bindprep.binding.Plan;
import io.bindprep.catalogue.Element;
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
        Json.integers(node, "lifts", plan.lifts());
        node.put("loops", plan.loops());
        Json.mm(node, "closerMm", plan.closer());
        Json.mm(node, "clearMarginMm", plan.clearMargin());
        Json.mm(node, "registrationMm", plan.registration());
        Json.mm(node, "punchedZoneMm", plan.punchedZone());
        Json.strings(
                node, "straddles", plan.straddles().stream().map(Element::name).toList());
        Json.strings(node, "because", plan.because());
    }
}
