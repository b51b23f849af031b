package io.bindprep.marks;

/** Which stage of the analysis settled a mark. */
public enum Stage {
    /** Exact bounds from the content stream. */
    GEOMETRY,
    /** Published metrics, or a guess by the stated widths: the font is not in the file. */
    ESTIMATE,
    /** Pixels of the rendered bound-edge strip. */
    RASTER
}
