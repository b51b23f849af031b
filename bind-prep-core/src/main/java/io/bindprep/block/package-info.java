/** Answers: which page lies on which side of which leaf, and which of its edges is bound? */
@NullMarked
package io.bindprep.block;

import org.jspecify.annotations.NullMarked;
