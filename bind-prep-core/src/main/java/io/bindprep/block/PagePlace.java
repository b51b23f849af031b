package io.bindprep.block;

import io.bindprep.page.PageEdge;

/**
 * Place of a page.
 *
 * @param page page number from 1
 * @param recto whether it is on the front of its leaf
 * @param bindingEdge the edge of this page, as the reader sees it, that is bound
 * @param mirrored whether positions along the binding edge, read on this page from its head (or from its left where it is
 *     bound at top or bottom), run against those read on the recto of the leaf
 */
public record PagePlace(int page, boolean recto, PageEdge bindingEdge, boolean mirrored) {}
