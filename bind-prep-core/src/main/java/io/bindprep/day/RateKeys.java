package io.bindprep.day;

import java.util.List;

/** The keys of a shop's rates. */
final class RateKeys {
    static final String CURRENCY = "currency";
    static final String STROKES = "strokes-per-minute";
    static final String SETUP = "setup-minutes";
    static final String JOB = "minutes-per-job";
    static final String BOOK = "minutes-per-book";
    static final String HOUR = "cost-per-hour";
    static final String SHEETS = "price-per-sheet";
    static final String COVERS = "price-per-cover";
    static final String ELEMENTS = "price-per-element";
    static final String SPOOL = "loops-per-spool";

    static final List<String> ALL = List.of(CURRENCY, STROKES, SETUP, JOB, BOOK, HOUR, SHEETS, COVERS, ELEMENTS, SPOOL);

    private RateKeys() {}
}
