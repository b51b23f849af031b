package io.bindprep.catalogue;

import io.bindprep.problem.SettingException;
import io.bindprep.table.OwnTables;
import io.bindprep.table.Table;
import io.bindprep.table.TableKind;
import io.bindprep.unit.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The sizes, ours and the shop's own, in which wires, coils, combs and ring mechanisms are sold, by group, smallest first. */
public final class Elements {
    private static final java.util.regex.Pattern SHEETS = java.util.regex.Pattern.compile("([1-9]\\d{0,4})?");
    private static final Table OURS = Table.beside(Elements.class, "elements.csv");
    // larger than any element sold: what lies above is a slip of the unit; common practice, no source
    private static final Length MOST = Length.ofMm(200);

    private final List<Entry> all;

    /**
     * One size.
     *
     * @param group what it is and its pitch ("wire 3:1"), as {@link Pattern#elements} names it
     * @param sheets sheets of 20 lb bond that it takes by its capacity; null where its size says what it takes
     * @param nearFrom from so many sheets on it is near its limit, as charts differ; null where they do not
     */
    public record Entry(
            String group,
            Element element,
            @Nullable Integer sheets,
            @Nullable Integer nearFrom) {
        /** Returns true if it takes a thickness by its capacity, or with a clearance where none is known. */
        public boolean takes(Length thickness, Length clearance) {
            return sheets == null ? spans(thickness, clearance) : bond(sheets).compareTo(thickness) >= 0;
        }

        /** Returns true if its size is at least a thickness with a clearance. */
        public boolean spans(Length thickness, Length clearance) {
            return element.size().compareTo(thickness.plus(clearance)) >= 0;
        }

        /** Returns true if a thickness that it takes is in the part of its range that charts differ about. */
        public boolean near(Length thickness) {
            return nearFrom != null && bond(nearFrom).compareTo(thickness) <= 0;
        }
    }

    private Elements(List<Entry> all) {
        this.all = List.copyOf(all);
    }

    static Elements of(OwnTables own) throws SettingException {
        List<String> groups = new ArrayList<>();
        List<Entry> all = new ArrayList<>(own.over(TableKind.ELEMENTS, OURS, Elements::entry));
        all.forEach(e -> groups.add(e.group()));
        // groups as they come, sizes of a group smallest first wherever the shop's own rows stand
        all.sort(Comparator.comparing((Entry e) -> groups.indexOf(e.group()))
                .thenComparing(e -> e.element().size()));
        return new Elements(all);
    }

    private static Entry entry(Table.Row row) {
        Length size = row.read("size", Length::parse);
        if (size.compareTo(Length.ZERO) <= 0 || size.compareTo(MOST) > 0) {
            throw row.wrong("size", "is not more than nothing and at most " + MOST.inMm(), List.of());
        }
        Integer sheets = count(row, "sheets");
        Integer near = count(row, "near_from");
        if (near != null && (sheets == null || near > sheets)) {
            throw row.wrong("near_from", "is more than the sheets that it takes", List.of());
        }
        return new Entry(row.get("elements"), new Element(row.get("name"), size, row.source()), sheets, near);
    }

    private static @Nullable Integer count(Table.Row row, String column) {
        String sheets = row.get(column);
        if (!SHEETS.matcher(sheets).matches()) {
            throw row.wrong(column, "is no whole number of sheets above zero", List.of());
        }
        return sheets.isEmpty() ? null : Integer.valueOf(sheets);
    }

    /** So many sheets of 20 lb bond, in which comb capacities are stated: 0.0037 in each (JCP O-63). */
    public static Length bond(int sheets) {
        return Length.ofInch(37L * sheets, 10_000);
    }

    /** Every size, by group, smallest first. */
    public List<Entry> all() {
        return all;
    }

    /** Notes above our table: where its numbers come from. */
    public static List<String> notes() {
        return OURS.notes();
    }

    /** The sizes that go with a pattern, smallest first; empty where none is known. */
    public List<Entry> of(Pattern pattern) {
        return all.stream().filter(e -> e.group().equals(pattern.elements())).toList();
    }
}
