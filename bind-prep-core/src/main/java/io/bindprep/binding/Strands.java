package io.bindprep.binding;

import io.bindprep.catalogue.Pattern;
import io.bindprep.table.Table;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Optional;

/** How thick the strands of elements are where they pass through the holes. */
public final class Strands {
    private static final Table TABLE = Table.beside(Strands.class, "strands.csv");
    private static final List<Strand> ALL = TABLE.rows().stream()
            .map(row -> new Strand(row.get("elements"), Length.parse(row.get("thickness")), row.get("source")))
            .toList();

    private Strands() {}

    /**
     * One kind of strand.
     *
     * @param elements the group of {@link io.bindprep.catalogue.Elements} it is of
     * @param thickness the thicker end of what is in use
     */
    public record Strand(String elements, Length thickness, String source) {}

    /** Every strand, as the table has them. */
    public static List<Strand> all() {
        return ALL;
    }

    /** What stands above the table. */
    public static List<String> notes() {
        return TABLE.notes();
    }

    static Optional<Strand> of(Pattern pattern) {
        return ALL.stream().filter(s -> s.elements().equals(pattern.elements())).findFirst();
    }
}
