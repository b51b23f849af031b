package io.bindprep.marks;

/** Which stage of the analysis settled a mark. */
public enum Stage {
    /** Exact bounds from the content stream. */
    GEOMETRY,
    /** Pixels of the rendered bound-edge strip. */
    RASTER
}
