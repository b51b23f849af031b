package io.bindprep.page;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;

/**
 * Move of a page's content: scaled alike both ways, then moved away from the binding edge. A point x from the binding edge
 * comes to lie {@code scale * x + awayMm} from it; along the edge content is scaled about the middle.
 *
 * @param bindingEdge the edge of the page that is bound, as the reader sees it
 * @param scale 1 for none
 */
public record Move(PageEdge bindingEdge, double awayMm, double scale) {
    /** Less than this is no move: a tenth of the least that is ever asked for. */
    private static final double NOTHING_MM = 0.001;

    /** Returns true if content stays where and as it is. */
    public boolean nothing() {
        return Math.abs(awayMm) < NOTHING_MM && scale == 1;
    }

    /** Returns true if content is made smaller. */
    public boolean scales() {
        return scale != 1;
    }

    /** The same in a page's user space, to be put before every other transform of its content. */
    public AffineTransform inUserSpace(PageFacts page) {
        AffineTransform frame = page.toBindingEdge(bindingEdge);
        double middle = page.along(bindingEdge).mm() / 2;
        try {
            AffineTransform t = frame.createInverse();
            t.concatenate(new AffineTransform(scale, 0, 0, scale, awayMm, middle * (1 - scale)));
            t.concatenate(frame);
            // only scaled and moved in any turn of the page: rounding must not bring in a slant
            return new AffineTransform(scale, 0, 0, scale, t.getTranslateX(), t.getTranslateY());
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("a page has an area", e);
        }
    }
}
