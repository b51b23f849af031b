package io.bindprep.binding;

/**
 * What a way to punch does to the content.
 *
 * @param punched pages that would lose matter
 * @param tight pages with matter too near
 * @param unread pages of which nothing is known
 */
public record PageCount(int punched, int tight, int unread) {}
