package io.bindprep.catalogue;

import io.bindprep.unit.Length;

/**
 * Element that holds the leaves: a wire, coil, comb or ring mechanism of one size.
 *
 * @param name its nominal size as the trade writes it, "3/8 in"
 * @param size nominal inner diameter
 * @param source where its range comes from
 */
public record Element(String name, Length size, String source) {}
