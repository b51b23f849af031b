package io.bindprep.wording;

/** Terms of the trade as people read them, each in one place; ids, keys and JSON names do not change with them. */
public final class Terms {
    /** Strip at the binding edge that print should keep free of. */
    public static final String BINDING_MARGIN = "binding margin";

    /** Strip at the binding edge that the holes can reach, tolerance included. */
    public static final String HOLE_ZONE = "hole zone";

    /** Distance that a hole may lie off its place, either way. */
    public static final String PUNCHING_TOLERANCE = "punching tolerance";

    private Terms() {}

    /** The verdict of a page as people read it, by its name in JSON. */
    public static String verdict(String name) {
        return name.equals("unchecked") ? "not checked" : name;
    }
}
