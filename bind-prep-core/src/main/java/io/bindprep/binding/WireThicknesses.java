package io.bindprep.binding;

import io.bindprep.catalogue.Pattern;
import io.bindprep.table.Table;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Optional;

/** Thickness of elements where they pass through the holes. */
public final class WireThicknesses {
    private static final Table TABLE = Table.beside(WireThicknesses.class, "wire-thicknesses.csv");
    private static final List<WireThickness> ALL = TABLE.rows().stream()
            .map(row -> new WireThickness(row.get("elements"), Length.parse(row.get("thickness")), row.get("source")))
            .toList();

    private WireThicknesses() {}

    /**
     * One kind of wire thickness.
     *
     * @param elements the group of {@link io.bindprep.catalogue.Elements} it is of
     * @param thickness the thicker end of what is in use
     */
    public record WireThickness(String elements, Length thickness, String source) {}

    /** Every wire thickness, as the table has them. */
    public static List<WireThickness> all() {
        return ALL;
    }

    /** Notes above the table. */
    public static List<String> notes() {
        return TABLE.notes();
    }

    static Optional<WireThickness> of(Pattern pattern) {
        return ALL.stream().filter(s -> s.elements().equals(pattern.elements())).findFirst();
    }
}
