/** Answers: which operators and operands stand in these bytes? Content streams as ISO 32000-1:2008, 7.2 to 7.8, has them, bounded. */
@NullMarked
package io.bindprep.pdf.syntax;

import org.jspecify.annotations.NullMarked;
