/** Answers: what does the run need, and in which steps is it made? */
@NullMarked
package io.bindprep.run;

import org.jspecify.annotations.NullMarked;
