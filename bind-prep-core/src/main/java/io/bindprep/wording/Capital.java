package io.bindprep.wording;

/** Words that begin a line or a sentence. */
public final class Capital {
    private Capital() {}

    /** A text with a capital in front. */
    public static String first(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    /** A sentence as it stands by itself: with a capital and a full stop. */
    public static String sentence(String text) {
        return text.isEmpty() || text.endsWith(".") ? first(text) : first(text) + ".";
    }
}
