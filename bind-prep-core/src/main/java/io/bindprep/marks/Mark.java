package io.bindprep.marks;

import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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

    // equality by hand: Java links a record's own at its first call, for ten records a tenth of a small check
    @Override
    public boolean equals(@Nullable Object o) {
        return o instanceof Mark other
                && kind == other.kind
                && stage == other.stage
                && shape.equals(other.shape)
                && Double.compare(nearMm, other.nearMm) == 0
                && Double.compare(farMm, other.farMm) == 0
                && Double.compare(alongStartMm, other.alongStartMm) == 0
                && Double.compare(alongEndMm, other.alongEndMm) == 0
                && words.equals(other.words);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, stage, shape, nearMm, farMm, alongStartMm, alongEndMm, words);
    }
}
