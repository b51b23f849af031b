/** Answers: is it good? Rules over facts, plan and marks; the report. */
@NullMarked
package io.bindprep.check;

import org.jspecify.annotations.NullMarked;
