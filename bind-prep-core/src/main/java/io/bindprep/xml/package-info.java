/** Answers: how is XML written, so that any text may stand in it? */
@NullMarked
package io.bindprep.xml;

import org.jspecify.annotations.NullMarked;
