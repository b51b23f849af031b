/** Answers: where does a page's content put ink, by its outlines alone? No picture is decoded here. */
@NullMarked
package io.bindprep.pdf.ink;

import org.jspecify.annotations.NullMarked;
