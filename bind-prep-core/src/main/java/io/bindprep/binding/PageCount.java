package io.bindprep.binding;

/**
 * What a way to punch does to the content.
 *
 * @param hit pages that would lose matter
 * @param tight pages with matter too near
 * @param unchecked pages of which nothing is known
 */
public record PageCount(int hit, int tight, int unchecked) {}
