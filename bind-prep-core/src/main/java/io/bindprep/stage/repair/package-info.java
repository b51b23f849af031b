/** Answers: in which order is a document repaired? Check, room, moves, changed copy, its check, the file. */
@NullMarked
package io.bindprep.stage.repair;

import org.jspecify.annotations.NullMarked;
