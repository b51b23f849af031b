package io.bindprep.paper;

import io.bindprep.table.Table;
import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Collectors;

/** Numbers that decide about stocks, by their table. */
final class PaperLimits {
    private static final Map<String, BigDecimal> VALUES = Table.beside(PaperLimits.class, "limits.csv").rows().stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.get("name"), row -> new BigDecimal(row.get("value"))));

    private PaperLimits() {}

    /** The number of this name. */
    static BigDecimal of(String name) {
        BigDecimal value = VALUES.get(name);
        if (value == null) {
            throw new IllegalStateException("limits.csv has no row " + name);
        }
        return value;
    }

    /** A range: its least and its most. */
    static double[] range(String name) {
        return new double[] {
            of(name + "-least").doubleValue(), of(name + "-most").doubleValue()
        };
    }
}
