/** Answers: what prints near the bound edge, and does a hole meet it. */
@NullMarked
package io.bindprep.marks;

import org.jspecify.annotations.NullMarked;
