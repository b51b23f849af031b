/** Answers: what do the dots of a drawn page show? The second look at a strip, and pictures for people. */
@NullMarked
package io.bindprep.pdf.strip;

import org.jspecify.annotations.NullMarked;
