package io.bindprep.job;

/** Binding methods. */
public enum Method {
    WIRE,
    COIL,
    COMB,
    RINGS
}
