/** Answers: how does a changed copy come about? Moved content, pages that come or go, a proof drawn over pages. */
@NullMarked
package io.bindprep.pdf.edit;

import org.jspecify.annotations.NullMarked;
