package io.bindprep.marks;

/**
 * A picture that runs through the binding edge, and by what it was judged.
 *
 * @param by what decided
 * @param groundPercent share of the stretches along the edge that have the same ground colour, noise allowed for
 * @param noise median difference of the dots to their ground, of 255
 */
public record EdgePicture(Nature nature, By by, int groundPercent, double noise) {
    /** Feature of a picture that decided its nature. */
    public enum By {
        /** Pieces of the size and stroke of letters, on even ground. */
        LETTERING,
        /** One ground along the edge, or none. */
        GROUND,
        /** A ground that changes evenly, with sharp marks on it: drawn, or out of focus. */
        EVEN_GROUND,
        /** A ground with grain, and hardly a mark as dark as print. */
        PALE_MARKS
    }

    /** Nature of a picture, which decides how its dots are judged. */
    public enum Nature {
        /** A page or scan: its marks count. */
        PAGE,
        /** A page or a photograph: at most one estimated mark, which is tight, never hit. */
        IN_DOUBT,
        /** A photograph: background. */
        PHOTOGRAPH
    }
}
