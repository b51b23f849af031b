package io.bindprep.report.catalogue;

import java.util.Locale;

/** A table of the catalogue. */
public enum CatalogueSection {
    STOCKS,
    SIZES,
    PATTERNS,
    ELEMENTS,
    PUNCHES,
    CLEARANCES,
    WIRE_THICKNESSES,
    LIMITS;

    /** Name for people, "stocks". */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
