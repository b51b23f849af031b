package io.bindprep.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The tables that a shop may add rows to, told apart by their columns. */
public enum TableKind {
    /** Papers, boards and films. */
    STOCKS(List.of("id"), "kind caliper tolerance", "basis_in basis_lb gsm"),
    /** Sheet sizes, portrait. */
    SIZES(List.of("name"), "width height tolerance", ""),
    /** Hole patterns. */
    PATTERNS(
            List.of("id"),
            "method row shape hole_along hole_across spacing centre elements",
            "pitch hole_published centre_published reference_edge published_count"),
    /** Elements by group. */
    ELEMENTS(List.of("elements", "name"), "size", "sheets near_from"),
    /** Punches. */
    PUNCHES(List.of("id"), "pattern pins guide capacity pullable longest_edge minimum_web", "first_pin"),
    /** Settings of the depth stop of punches. */
    DEPTHS(List.of("punch", "name"), "centre", "from_stack"),
    /** Numbers that decide where neither the job nor the punch says its own. */
    LIMITS(List.of("name"), "value", "");

    private final List<String> keys;
    private final List<String> required;
    private final List<String> columns;

    TableKind(List<String> keys, String required, String optional) {
        this.keys = keys;
        List<String> all = new ArrayList<>(keys);
        all.addAll(words(required));
        this.required = List.copyOf(all);
        all.addAll(words(optional));
        all.add("source");
        this.columns = List.copyOf(all);
    }

    private static List<String> words(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split(" ", -1));
    }

    /** The columns that tell one row from another. */
    public List<String> keys() {
        return keys;
    }

    /** The columns that a table of this kind must have. */
    public List<String> required() {
        return required;
    }

    /** The columns that a table of this kind may have. */
    public List<String> columns() {
        return columns;
    }

    /** Name for people, "stocks". */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Number of these columns that are its own, less what is not, to tell what a table was meant to be. */
    int likeness(List<String> given) {
        int own = (int) given.stream().filter(columns::contains).count();
        int missing = (int) required.stream().filter(c -> !given.contains(c)).count();
        return 2 * own - given.size() - missing;
    }

    boolean has(List<String> given) {
        return given.containsAll(required) && columns.containsAll(given);
    }
}
