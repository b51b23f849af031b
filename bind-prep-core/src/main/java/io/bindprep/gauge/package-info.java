/** Answers: how does the punch on the desk stand? A sheet to punch and read, and what the readings say of the punch. */
@NullMarked
package io.bindprep.gauge;

import org.jspecify.annotations.NullMarked;
