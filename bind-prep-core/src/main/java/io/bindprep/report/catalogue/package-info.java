/** Answers: what may a job name? Stocks, sizes, patterns, elements and punches, listed as text and JSON. */
@NullMarked
package io.bindprep.report.catalogue;

import org.jspecify.annotations.NullMarked;
