package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.binding.Depth;
import io.bindprep.binding.Depth.Decider;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A setting of the depth stop, as JSON. */
record JsonDepth(
        @JsonPropertyDescription("how the punch calls it") String name,

        @JsonPropertyDescription("binding edge to hole centre")
        BigDecimal centreMm,

        @JsonPropertyDescription("paper between the binding edge and the holes")
        BigDecimal outsideMm,

        @JsonPropertyDescription("what that must stay below for pages to turn freely; null where no element is known")
        @Nullable
        BigDecimal turnsBelowMm,

        @JsonPropertyDescription("whether pages turn freely; null where that is not known") @Nullable
        Boolean turnsFreely,

        @JsonPropertyDescription("what it was chosen by; null where it was only weighed") @Nullable
        Decider decidedBy,

        @JsonPropertyDescription("where the centre comes from")
        String source) {
    static JsonDepth of(Depth depth) {
        return new JsonDepth(
                depth.setting().name(),
                Json.mm(depth.setting().centre()),
                Json.mm(depth.outside()),
                Json.mmOrNull(depth.turnsBelow()),
                depth.turnsBelow() == null ? null : depth.turnsFreely(),
                depth.decidedBy(),
                depth.setting().source());
    }
}
