package io.bindprep.report.catalogue;

import java.util.function.Function;

/**
 * Parts shown of a row.
 *
 * @param inTable whether it stands in the table of all rows
 * @param alone whether it stands where one row is shown alone
 */
record CatalogueColumn<T>(String label, boolean inTable, boolean alone, Function<T, String> text) {
    /** Shown wherever the row is. */
    static <T> CatalogueColumn<T> both(String label, Function<T, String> text) {
        return new CatalogueColumn<>(label, true, true, text);
    }

    /** The short form, for the table. */
    static <T> CatalogueColumn<T> table(String label, Function<T, String> text) {
        return new CatalogueColumn<>(label, true, false, text);
    }

    /** Too much for the table. */
    static <T> CatalogueColumn<T> alone(String label, Function<T, String> text) {
        return new CatalogueColumn<>(label, false, true, text);
    }
}
