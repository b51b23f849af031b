package io.bindprep.marks;

/** Stages of the analysis that settle a mark. */
public enum Stage {
    /** Exact bounds from the content stream. */
    GEOMETRY,
    /**
     * Published metrics, or a guess by the stated widths: the font is not in the file; or the rectangle of an annotation
     * that each reader draws its own way; or a mark in a picture that may be a photograph.
     */
    ESTIMATE,
    /** Pixels of the rendered binding-edge strip. */
    RASTER;

    /** Tolerance of a mark's ends, millimetres: a dot of the drawing; else nothing that matters in print. */
    public double coarseMm() {
        return this == RASTER ? 0.2 : 0;
    }
}
