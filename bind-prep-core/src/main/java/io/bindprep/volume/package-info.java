/** Answers: into which volumes does a book go that no element takes, and on which thinner stock would it stay one? */
@NullMarked
package io.bindprep.volume;

import org.jspecify.annotations.NullMarked;
