package io.bindprep.table;

import java.util.List;

/** A row of a table that cannot be read; its message names file, line, column and value. */
public final class BadRow extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    private final String value;
    private final transient List<String> known;

    BadRow(String message, String value, List<String> known) {
        super(message);
        this.value = value;
        this.known = List.copyOf(known);
    }

    /** Value that stands there. */
    public String value() {
        return value;
    }

    /** Values that could stand there; empty where that cannot be listed. */
    public List<String> known() {
        return known;
    }
}
