package io.bindprep.wording;

/** Units in which lengths are shown to people. */
public enum Units {
    METRIC,
    INCH,
    BOTH
}
