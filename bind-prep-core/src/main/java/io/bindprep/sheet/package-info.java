/** Answers: what does the operator at the punch work from? The job sheet as a PDF, with the binding edge at its true size. */
@NullMarked
package io.bindprep.sheet;

import org.jspecify.annotations.NullMarked;
