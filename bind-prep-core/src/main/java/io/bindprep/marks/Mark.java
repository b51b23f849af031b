package io.bindprep.marks;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/**
 * One thing that prints, in the binding-edge frame of its page: x is the distance from the binding edge, y the distance from
 * the page's head as the reader sees it (from its left where it is bound at top or bottom), both in millimetres, cut to
 * the trim.
 *
 * @param kind what it is
 * @param shape what prints of it within the scanned strip, its bounds once judged; never changed once here
 * @param nearMm least distance from the binding edge, 0 where it reaches it
 * @param farMm greatest distance within the scanned strip
 * @param alongStartMm where it begins along the binding edge
 * @param alongEndMm where it ends along the binding edge
 * @param words the words it shows, shortened; empty for what is not text
 */
public record Mark(
        MarkKind kind,
        Stage stage,
        Shape shape,
        double nearMm,
        double farMm,
        double alongStartMm,
        double alongEndMm,
        String words) {
    /** The same mark with its bounds for a shape, to keep for thousands of pages. */
    Mark bounded() {
        return new Mark(
                kind,
                stage,
                new Rectangle2D.Double(nearMm, alongStartMm, farMm - nearMm, alongEndMm - alongStartMm),
                nearMm,
                farMm,
                alongStartMm,
                alongEndMm,
                words);
    }
}
