package io.bindprep.binding;

import io.bindprep.table.Table;
import io.bindprep.unit.Length;
import java.math.BigDecimal;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Numbers that decide where neither the job nor the punch says its own, each with its source. */
public final class Limits {
    private static final Map<String, Table.Row> ROWS = Table.beside(Limits.class, "limits.csv").rows().stream()
            .collect(Collectors.toUnmodifiableMap(row -> row.get("name"), Function.identity()));

    /** Less paper than this between the binding edge and the holes does not hold. */
    public static final Limit PAPER_OUTSIDE_ERROR = of("paper-outside-error");

    /** Less paper than this between the binding edge and the holes tears easily. */
    public static final Limit PAPER_OUTSIDE_WARNING = of("paper-outside-warning");

    static final Limit MARGIN_BEYOND_HOLES = of("margin-beyond-holes");
    static final Limit DEEPEST = of("depth-deepest");
    static final Limit PACK = of("pack");
    static final Limit CUT = of("cut");

    /** Paper outside the holes, as a share of the element's size, up to which a deeper setting is taken. */
    static final BigDecimal DEPTH_SHARE = new BigDecimal(row("depth-share").get("value"));

    static final String DEPTH_SHARE_SOURCE = row("depth-share").source();

    private Limits() {}

    /** A length that decides. */
    public record Limit(Length value, String source) {}

    /** The binding margin of wire of a pitch; that of 2:1 where it has none of its own. */
    static Limit wireMargin(String pitchName) {
        String own = "margin-" + pitchName;
        return of(ROWS.containsKey(own) ? own : "margin-2:1");
    }

    private static Limit of(String name) {
        Table.Row row = row(name);
        return new Limit(Length.parse(row.get("value")), row.source());
    }

    private static Table.Row row(String name) {
        Table.Row row = ROWS.get(name);
        if (row == null) {
            throw new IllegalStateException("limits.csv has no row " + name);
        }
        return row;
    }
}
