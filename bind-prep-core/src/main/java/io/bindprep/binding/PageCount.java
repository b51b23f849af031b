package io.bindprep.binding;

/**
 * Effect of a way to punch on the content.
 *
 * @param hit pages whose content the holes would cut
 * @param tight pages with matter too near
 * @param unchecked pages of which nothing is known
 */
public record PageCount(int hit, int tight, int unchecked) {}
