/** Answers: how long is it, exactly? Lengths stay exact until they are printed. */
@NullMarked
package io.bindprep.unit;

import org.jspecify.annotations.NullMarked;
