package io.bindprep.paper;

import io.bindprep.unit.Length;

/**
 * A sheet as it lies in a stack.
 *
 * @param layers how many of it lie on each other, folded in
 * @param width its width, unfolded
 * @param height its height, unfolded
 */
public record Sheet(Stock stock, int layers, Length width, Length height) {}
