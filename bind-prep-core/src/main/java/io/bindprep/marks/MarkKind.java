package io.bindprep.marks;

/** Kind of a mark. */
public enum MarkKind {
    TEXT,
    LINE,
    ART,
    IMAGE,
    ANNOTATION,
    /** A flat tint or picture that runs through the binding edge. */
    BACKGROUND
}
