/** Answers: in which order are the jobs of a day punched, what changes between them, what do they use up and cost? */
@NullMarked
package io.bindprep.day;

import org.jspecify.annotations.NullMarked;
