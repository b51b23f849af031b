package io.bindprep.binding;

import io.bindprep.table.Table;
import io.bindprep.unit.Length;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The sizes in which wires, coils, combs and ring mechanisms are sold, by group, smallest first. */
public final class Elements {
    private static final List<Entry> ALL = Table.beside(Elements.class, "elements.csv").rows().stream()
            .map(row -> new Entry(
                    row.get("elements"),
                    new Element(row.get("name"), Length.parse(row.get("size")), row.get("source")),
                    row.get("sheets").isEmpty() ? null : Integer.valueOf(row.get("sheets"))))
            .toList();

    /**
     * One size.
     *
     * @param group what it is and its pitch ("wire 3:1"), as {@link Pattern#elements} names it
     * @param sheets sheets of 20 lb bond that it takes by its published capacity; null where its size says what it takes
     */
    public record Entry(
            String group, Element element, @Nullable Integer sheets) {
        boolean takes(Length thickness, Length clearance) {
            return sheets == null
                    ? element.size().compareTo(thickness.plus(clearance)) >= 0
                    : bond(sheets).compareTo(thickness) >= 0;
        }
    }

    private Elements() {}

    // 20 lb bond, in which comb capacities are stated, is 0.0037 in thick (JCP O-63)
    static Length bond(int sheets) {
        return Length.ofInch(37L * sheets, 10_000);
    }

    /** Every size, by group, as the table has them. */
    public static List<Entry> all() {
        return ALL;
    }

    /** The sizes that go with a pattern, smallest first; empty where none is known. */
    public static List<Entry> of(Pattern pattern) {
        return ALL.stream().filter(e -> e.group().equals(pattern.elements())).toList();
    }

    /**
     * The smallest that takes a thickness: size at least thickness plus clearance, or, where a capacity in sheets is
     * published, at least so many sheets of 20 lb bond as are as thick (a capacity has its room in it already).
     */
    static Optional<Entry> smallest(Pattern pattern, Length thickness, Length clearance) {
        return of(pattern).stream().filter(e -> e.takes(thickness, clearance)).findFirst();
    }
}
