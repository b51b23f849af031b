/** Answers: how far must content move to be clear of the holes, does it fit there, and what came of it? */
@NullMarked
package io.bindprep.repair;

import org.jspecify.annotations.NullMarked;
