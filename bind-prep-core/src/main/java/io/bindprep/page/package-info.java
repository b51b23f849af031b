/** Answers: how large is each page and which way up, as ISO 32000-1:2008 has it? */
@NullMarked
package io.bindprep.page;

import org.jspecify.annotations.NullMarked;
