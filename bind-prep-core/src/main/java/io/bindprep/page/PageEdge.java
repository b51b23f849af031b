package io.bindprep.page;

/** The edge of one page, as the reader sees it, that lies in the binding. */
public enum PageEdge {
    LEFT,
    RIGHT,
    TOP,
    BOTTOM;

    /** Returns true if it runs from head to foot. */
    public boolean upright() {
        return this == LEFT || this == RIGHT;
    }

    /** The edge across the page. */
    public PageEdge opposite() {
        return switch (this) {
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
            case TOP -> BOTTOM;
            case BOTTOM -> TOP;
        };
    }
}
