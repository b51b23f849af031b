package io.bindprep.page;

import io.bindprep.unit.Length;
import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;

/**
 * Declared size and rotation of a page, after inheritance and defaults of ISO 32000-1:2008, 7.7.3.3 and 14.11.2.
 *
 * @param page page number from 1
 * @param media MediaBox in user space units
 * @param crop CropBox, or its default, cut to the MediaBox
 * @param bleed BleedBox, or its default, cut to the MediaBox
 * @param trim TrimBox, else CropBox, else MediaBox, cut to the MediaBox
 * @param trimDeclared whether the page itself has a TrimBox
 * @param rotate clockwise turn when shown or printed: 0, 90, 180 or 270
 * @param userUnit size of a user space unit in 1/72 in
 */
public record PageFacts(
        int page, Box media, Box crop, Box bleed, Box trim, boolean trimDeclared, int rotate, double userUnit) {
    private static final double MM_PER_POINT = 25.4 / 72;

    private boolean quarterTurned() {
        return rotate == 90 || rotate == 270;
    }

    /** Width of the trimmed page as the reader sees it. */
    public Length trimWidth() {
        return Length.ofPoints((quarterTurned() ? trim.height() : trim.width()) * userUnit);
    }

    /** Height of the trimmed page as the reader sees it. */
    public Length trimHeight() {
        return Length.ofPoints((quarterTurned() ? trim.width() : trim.height()) * userUnit);
    }

    /** Length of one of the trimmed page's edges as the reader sees it. */
    public Length along(PageEdge edge) {
        return edge.upright() ? trimHeight() : trimWidth();
    }

    /** Millimetres of one user space unit on this page. */
    public double mmPerUnit() {
        return userUnit * MM_PER_POINT;
    }

    /**
     * From user space to the reader's frame: millimetres from the top left corner of the trimmed page as shown, x to the
     * right, y down.
     */
    public AffineTransform toReader() {
        double k = mmPerUnit();
        return switch (rotate) {
            case 90 -> new AffineTransform(0, k, k, 0, -trim.y0() * k, -trim.x0() * k);
            case 180 -> new AffineTransform(-k, 0, 0, k, trim.x1() * k, -trim.y0() * k);
            case 270 -> new AffineTransform(0, -k, -k, 0, trim.y1() * k, trim.x1() * k);
            default -> new AffineTransform(k, 0, 0, -k, -trim.x0() * k, trim.y1() * k);
        };
    }

    /**
     * From user space to the binding-edge frame: millimetres, x from the binding edge, y from the head as the reader sees the
     * page (from its left where it is bound at top or bottom).
     */
    public AffineTransform toBindingEdge(PageEdge edge) {
        AffineTransform t = switch (edge) {
            case LEFT -> new AffineTransform();
            case RIGHT -> new AffineTransform(-1, 0, 0, 1, trimWidth().mm(), 0);
            case TOP -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case BOTTOM -> new AffineTransform(0, 1, -1, 0, trimHeight().mm(), 0);
        };
        t.concatenate(toReader());
        return t;
    }

    /** The trimmed page and so many millimetres beyond one of its edges, in user space. */
    public Box beyond(PageEdge edge, double mm) {
        try {
            Rectangle2D strip = toBindingEdge(edge)
                    .createInverse()
                    .createTransformedShape(
                            new Rectangle2D.Double(-mm, 0, mm, along(edge).mm()))
                    .getBounds2D();
            return new Box(
                    Math.min(trim.x0(), strip.getMinX()),
                    Math.min(trim.y0(), strip.getMinY()),
                    Math.max(trim.x1(), strip.getMaxX()),
                    Math.max(trim.y1(), strip.getMaxY()));
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("a page has an area", e);
        }
    }

    /** Extent of the trimmed page away from one of its edges as the reader sees it. */
    public Length across(PageEdge edge) {
        return edge.upright() ? trimWidth() : trimHeight();
    }
}
