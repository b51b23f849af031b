package io.bindprep.wording;

/** A number with its noun. */
public final class Counted {
    private Counted() {}

    /** "1 leaf", "2 leaves"; the noun in the singular. */
    public static String of(long count, String noun) {
        if (count == 1) {
            return "1 " + noun;
        }
        return count + " " + (noun.equals("leaf") ? "leaves" : noun + "s");
    }
}
