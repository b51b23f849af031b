package io.bindprep.report.json;

import com.fasterxml.jackson.annotation.JsonValue;
import java.math.BigDecimal;
import java.util.List;

/** Two measured numbers, an array of two in JSON. */
record JsonPair(@JsonValue List<BigDecimal> both) {
    static JsonPair of(double first, double second) {
        return new JsonPair(List.of(Json.rounded(first), Json.rounded(second)));
    }
}
