package io.bindprep.pdf.ink;

import io.bindprep.marks.MarkKind;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSStream;
import org.jspecify.annotations.Nullable;

/** Learns of a page's content operator by operator as the engine carries it out, that of its forms included. */
public interface ContentFollower {
    /**
     * Content begins: the page's own, or that of a form which the next step of the content around it draws.
     *
     * @param form null for the page's own
     * @param ctm transform that is in force where it begins
     */
    void begin(byte[] content, @Nullable COSStream form, COSDictionary resources, AffineTransform ctm);

    /** An operator that paints, clips, begins a path, or sets or keeps the colour was carried out. */
    void step(Step step);

    /** The content that began last has ended. */
    void end();

    /**
     * One operator; places are in the user space of the page.
     *
     * @param start offset of its first operand, white space before it included
     * @param end offset behind it
     * @param ctm transform that was in force where it paints or ends a path; else of no meaning
     * @param path bounds of the path that it ends; null for none
     * @param clip kind of the path where it clips: a rectangle with sides along the centres, or any; null where it does not
     * @param painted bounds of what it paints, in a form all that the form paints; null for nothing
     * @param kind what it paints
     * @param prints false where it leaves bare paper as it is
     * @param masked whether a soft mask is in force, which stays where it was set
     * @param textMode how text was painted (Tr)
     * @param text where it shows text; null where it shows none
     */
    record Step(
            String name,
            int start,
            int end,
            AffineTransform ctm,
            @Nullable Rectangle2D path,
            @Nullable ClipPath clip,
            @Nullable Rectangle2D painted,
            @Nullable MarkKind kind,
            boolean prints,
            boolean masked,
            int textMode,
            @Nullable TextPlace text) {}

    /**
     * Place of text that one operator shows.
     *
     * @param matrix from text space to the user space of the page, where the text begins
     * @param emSize font size times horizontal scale: what numbers among the text count in thousandths of
     * @param advance distance along the line to where the text ends, in text space
     * @param rise in force (Ts)
     */
    record TextPlace(AffineTransform matrix, double emSize, double advance, double rise, boolean vertical) {}

    /** Path that clips. */
    enum ClipPath {
        RECTANGLE,
        ANY
    }
}
