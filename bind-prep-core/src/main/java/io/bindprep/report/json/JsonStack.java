package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import io.bindprep.paper.Stack;
import io.bindprep.report.words.Sentences;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The stack as JSON. */
record JsonStack(
        @JsonPropertyDescription("thickness by the stocks' nominal calipers")
        BigDecimal nominalMm,

        @JsonPropertyDescription("thinnest likely") BigDecimal minMm,

        @JsonPropertyDescription("thickest likely") BigDecimal maxMm,

        @JsonPropertyDescription("weight of one copy; null where a stock's grammage is unknown") @Nullable
        BigDecimal weightG,

        @JsonPropertyDescription("how the numbers came about, one sentence each")
        List<String> because) {
    static JsonStack of(Stack stack) {
        BigDecimal weight = stack.weightG();
        return new JsonStack(
                Json.mm(stack.nominal()),
                Json.mm(stack.min()),
                Json.mm(stack.max()),
                weight == null ? null : Json.rounded(weight, 1),
                stack.because().stream().map(Sentences::of).toList());
    }
}
