package io.bindprep.page;

/** The edge of one page, as the reader sees it, that lies in the binding. */
public enum PageEdge {
    LEFT,
    RIGHT,
    TOP,
    BOTTOM;

    /** Whether it runs from head to foot. */
    public boolean upright() {
        return this == LEFT || this == RIGHT;
    }
}
