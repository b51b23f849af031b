package io.bindprep.report.text;

/**
 * Layout of text.
 *
 * @param colour whether ANSI colours may be used; words carry the meaning either way
 * @param width columns to wrap at; less than {@value #NARROWEST} is taken as that
 * @param notes whether notes, all numbers and what other settings would do are shown in full
 */
public record TextStyle(boolean colour, int width, boolean notes) {
    /** The narrowest layout that still reads. */
    public static final int NARROWEST = 40;

    /** No colour, 100 columns. */
    public static final TextStyle PLAIN = new TextStyle(false, 100);

    /** Without notes. */
    public TextStyle(boolean colour, int width) {
        this(colour, width, false);
    }

    /** The same with notes, all numbers and what other settings would do. */
    public TextStyle withNotes() {
        return new TextStyle(colour, width, true);
    }

    public TextStyle {
        width = Math.max(NARROWEST, width);
    }
}
