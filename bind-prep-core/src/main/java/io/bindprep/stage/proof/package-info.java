/** Answers: in which order is a proof drawn? Check, drawings, changed copy, the file. */
@NullMarked
package io.bindprep.stage.proof;

import org.jspecify.annotations.NullMarked;
