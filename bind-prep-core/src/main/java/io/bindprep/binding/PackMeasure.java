package io.bindprep.binding;

import io.bindprep.unit.Length;

/**
 * Pack to measure where the likely range of a stack does not settle the element.
 *
 * @param stackAtMost the thickest stack that the smaller element takes
 * @param stock the stock of most leaves
 * @param sheets how many sheets of it to measure together
 * @param packAtMost the thickest such pack with which the stack is no thicker than that, the other stocks at their
 *     thickest; zero or less where those alone are too thick
 */
public record PackMeasure(Length stackAtMost, String stock, int sheets, Length packAtMost) {}
