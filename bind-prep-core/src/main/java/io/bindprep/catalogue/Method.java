package io.bindprep.catalogue;

/** Binding methods. */
public enum Method {
    WIRE,
    COIL,
    COMB,
    RINGS
}
