package io.bindprep.report;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.binding.Element;
import io.bindprep.binding.HoleRow;
import io.bindprep.binding.Plan;
import io.bindprep.job.Method;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The plan as JSON. */
record JsonPlan(
        @JsonPropertyDescription("what the book is bound with")
        Method method,

        @JsonPropertyDescription("id of the hole pattern, that of XJDF where it has it")
        String pattern,

        @JsonPropertyDescription("the trade's name of the pitch, else the pattern's id")
        String pitchName,

        @JsonPropertyDescription("axis to axis; the first spacing where there are several")
        BigDecimal pitchMm,

        @JsonPropertyDescription("nominal inner diameter of the element; null where none takes the stack") @Nullable
        BigDecimal elementMm,

        @JsonPropertyDescription("its size as the trade writes it; null where none takes the stack") @Nullable
        String elementName,

        @JsonPropertyDescription("bound edge to hole axis") BigDecimal edgeDistanceMm,

        @JsonPropertyDescription("the hole along the bound edge and away from it")
        JsonPair holeMm,

        @JsonPropertyDescription("the hole's shape") Shape holeShape,

        @JsonPropertyDescription("how many holes") int holes,

        @JsonPropertyDescription(
                "axis of the first hole from the head, or from the left where bound at top; null without" + " holes")
        @Nullable
        BigDecimal firstHoleMm,

        @JsonPropertyDescription("pins to take out, numbered from the side guide, from 1")
        List<Integer> pulledPins,

        @JsonPropertyDescription("pins that would cut a half hole and cannot be taken out")
        List<Integer> stuckPins,

        @JsonPropertyDescription("least paper between a hole and the end of the sheet")
        BigDecimal leastWebMm,

        @JsonPropertyDescription("leaves in each lift of one copy, in order")
        List<Integer> lifts,

        @JsonPropertyDescription("loops of the element to cut; 0 where it has none")
        int loops,

        @JsonPropertyDescription("what the closer is set to; null where nothing is closed") @Nullable
        BigDecimal closerMm,

        @JsonPropertyDescription("what live matter keeps from the bound edge")
        BigDecimal clearMarginMm,

        @JsonPropertyDescription("how far a hole may lie off its place, either way")
        BigDecimal registrationMm,

        @JsonPropertyDescription("bound edge to the far side of the holes, registration included")
        BigDecimal punchedZoneMm,

        @JsonPropertyDescription("elements that the likely range of the stack lies between, smaller first")
        List<String> straddles,

        @JsonPropertyDescription("each decision with its numbers and source")
        List<String> because) {

    /** Of a hole. */
    enum Shape {
        ROUND,
        RECTANGULAR
    }

    static JsonPlan of(Plan plan) {
        Element element = plan.element();
        HoleRow row = plan.row();
        return new JsonPlan(
                plan.method(),
                plan.pattern(),
                plan.pitchName(),
                Json.mm(plan.pitch()),
                element == null ? null : Json.mm(element.size()),
                element == null ? null : element.name(),
                Json.mm(plan.edgeDistance()),
                JsonPair.of(plan.holeAlong().mm(), plan.holeAcross().mm()),
                plan.round() ? Shape.ROUND : Shape.RECTANGULAR,
                row.holes().size(),
                row.holes().isEmpty() ? null : Json.mm(row.holes().get(0).axis()),
                row.pulledPins(),
                row.stuckPins(),
                Json.mm(row.leastWeb()),
                plan.lifts(),
                plan.loops(),
                Json.mmOrNull(plan.closer()),
                Json.mm(plan.clearMargin()),
                Json.mm(plan.registration()),
                Json.mm(plan.punchedZone()),
                plan.straddles().stream().map(Element::name).toList(),
                plan.because());
    }
}
