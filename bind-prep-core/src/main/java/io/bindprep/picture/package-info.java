/** Answers: which parts of which pages are worth a picture, and what such a picture is. */
@NullMarked
package io.bindprep.picture;

import org.jspecify.annotations.NullMarked;
