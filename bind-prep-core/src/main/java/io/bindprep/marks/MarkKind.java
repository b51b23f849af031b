package io.bindprep.marks;

/** What kind of thing prints. */
public enum MarkKind {
    TEXT,
    LINE,
    ART,
    IMAGE,
    ANNOTATION,
    /** A flat tint or picture that runs through the binding edge. */
    BACKGROUND
}
