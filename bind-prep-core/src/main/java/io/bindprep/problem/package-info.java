/** Answers: why is there no report? One sealed family, worded at the edge by each front end. */
@NullMarked
package io.bindprep.problem;

import org.jspecify.annotations.NullMarked;
