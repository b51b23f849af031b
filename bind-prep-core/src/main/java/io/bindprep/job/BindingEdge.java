package io.bindprep.job;

/** The edge of the first page, as the reader sees it, that lies in the binding. */
public enum BindingEdge {
    LEFT,
    RIGHT,
    TOP
}
