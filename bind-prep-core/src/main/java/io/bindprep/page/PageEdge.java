package io.bindprep.page;

/** The edge of one page, as the reader sees it, that lies in the binding. */
public enum PageEdge {
    LEFT,
    RIGHT,
    TOP,
    BOTTOM
}
