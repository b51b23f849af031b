package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.binding.Depth;
import io.bindprep.binding.Depth.Decider;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A setting of the depth stop, as JSON. */
record JsonDepth(
        @JsonPropertyDescription("how the punch calls it") String name,

        @JsonPropertyDescription("bound edge to hole axis") BigDecimal axisMm,

        @JsonPropertyDescription("paper between the bound edge and the holes")
        BigDecimal outsideMm,

        @JsonPropertyDescription("what that must stay below for pages to turn freely; null where no element is known")
        @Nullable
        BigDecimal turnsBelowMm,

        @JsonPropertyDescription("whether pages turn freely; null where that is not known") @Nullable
        Boolean turnsFreely,

        @JsonPropertyDescription("what it was chosen by; null where it was only weighed") @Nullable
        Decider decidedBy,

        @JsonPropertyDescription("where the axis comes from")
        String source) {
    static JsonDepth of(Depth depth) {
        return new JsonDepth(
                depth.setting().name(),
                Json.mm(depth.setting().axis()),
                Json.mm(depth.outside()),
                Json.mmOrNull(depth.turnsBelow()),
                depth.turnsBelow() == null ? null : depth.turnsFreely(),
                depth.decidedBy(),
                depth.setting().source());
    }
}
