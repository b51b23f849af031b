package io.bindprep.report.text;

/**
 * Layout of text.
 *
 * @param colour whether ANSI colours may be used; words carry the meaning either way
 * @param width columns to wrap at; less than {@value #NARROWEST} is taken as that
 */
public record TextStyle(boolean colour, int width) {
    /** The narrowest layout that still reads. */
    public static final int NARROWEST = 40;

    /** No colour, 100 columns. */
    public static final TextStyle PLAIN = new TextStyle(false, 100);

    public TextStyle {
        width = Math.max(NARROWEST, width);
    }
}
