package io.bindprep.job;

import java.util.List;

/** The keys of a job, spelt as in the job file. */
final class JobKeys {
    static final String COPIES = "copies";
    static final String SIDES = "sides";
    static final String BOUND_EDGE = "bound-edge";
    static final String TRIM = "trim";
    static final String STOCK = "stock";
    static final String COVERS = "covers";
    static final String INSERTS = "inserts";
    static final String BINDING = "binding";
    static final String PITCH = "pitch";
    static final String PUNCH = "punch";
    static final String CLEAR_MARGIN = "clear-margin";
    static final String REGISTRATION = "registration";
    static final String CLEARANCE = "clearance";
    static final String OVERS = "overs";
    static final String FAIL_ON = "fail-on";

    static final List<String> ALL = List.of(
            COPIES,
            SIDES,
            BOUND_EDGE,
            TRIM,
            STOCK,
            COVERS,
            INSERTS,
            BINDING,
            PITCH,
            PUNCH,
            CLEAR_MARGIN,
            REGISTRATION,
            CLEARANCE,
            OVERS,
            FAIL_ON);

    private JobKeys() {}
}
