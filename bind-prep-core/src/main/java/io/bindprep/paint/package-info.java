/** Answers: how is a document of our own painted? Pages, lines, holes and print in millimetres, in black and white. */
@NullMarked
package io.bindprep.paint;

import org.jspecify.annotations.NullMarked;
