/** Answers: how does a person read a result on a terminal? */
@NullMarked
package io.bindprep.report.text;

import org.jspecify.annotations.NullMarked;
