/** Answers: what is drawn over which page so that people see where it is punched and what it loses? */
@NullMarked
package io.bindprep.proof;

import org.jspecify.annotations.NullMarked;
