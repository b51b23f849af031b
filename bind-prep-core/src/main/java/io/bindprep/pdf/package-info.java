/** Answers: what does the file say and what does each page paint near its binding edge? The only package that knows PDFBox and Tika. */
@NullMarked
package io.bindprep.pdf;

import org.jspecify.annotations.NullMarked;
