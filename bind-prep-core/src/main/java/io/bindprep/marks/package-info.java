/** Answers: what prints near the binding edge, and does a hole meet it. */
@NullMarked
package io.bindprep.marks;

import org.jspecify.annotations.NullMarked;
