/** Answers: what is asked for? A document with its job, a repair, a proof. */
@NullMarked
package io.bindprep.request;

import org.jspecify.annotations.NullMarked;
